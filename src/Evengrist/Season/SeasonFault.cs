namespace Evengrist.Season;

/// <summary>One thing wrong with what was asked of a plan.</summary>
/// <param name="Where">What it stands at: <c>flour WB, demand, period 3</c>.</param>
/// <param name="What">What is wrong and what to do, in a sentence.</param>
public sealed record SeasonFault(string Where, string What)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Where}: {What}";
}
