namespace Evengrist.Intake;

/// <summary>What a contract says of something smelt or seen on a load: musty, sour, another odour.</summary>
/// <param name="What">The word as it is observed; case does not matter.</param>
/// <param name="Effect">Money added to the price for each unit; negative takes. The agreed amount, where a schedule prints only the least.</param>
/// <param name="Refused">Whether such a load is not taken at all.</param>
public sealed record ObservedCharge(string What, decimal Effect, bool Refused = false)
{
    /// <summary>Whether it is about what was observed.</summary>
    public bool IsAbout(string observed) => What.Equals((observed ?? "").Trim(), StringComparison.OrdinalIgnoreCase);
}
