namespace Evengrist.Intake.Sampling;

/// <summary>One rule for sampling a vehicle: how many increments, how large, and how well the rule is known. Data.</summary>
/// <param name="Code">A short name for files and tables.</param>
/// <param name="Name">In the words of the scale house.</param>
/// <param name="Spread">How the points are spread.</param>
/// <param name="Steps">From how much mass or depth on which number holds; by the upper end of each range.</param>
/// <param name="By">What the steps go by.</param>
/// <param name="Standing">How well the rule is known.</param>
/// <param name="Source">Where it stands or was heard.</param>
public sealed record ProbePattern(string Code, string Name, PointSpread Spread, IReadOnlyList<ProbeStep> Steps, ProbeBy By, Standing Standing, string Source)
{
    /// <summary>The vehicles it is for; empty for any.</summary>
    public IReadOnlyList<VehicleKind> For { get; init; } = [];

    /// <summary>What one increment weighs at least, g; null where no such figure is known.</summary>
    public int? IncrementGrams { get; init; }

    /// <summary>What must be taken beside the rule itself, each a sentence.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>How well it is known, in words, with the source.</summary>
    public string Mark => Standing switch
    {
        Standing.Read => $"read in: {Source}",
        Standing.Memory => $"from memory, source not read: {Source}",
        _ => $"from memory, low confidence, check before use: {Source}",
    };
}
