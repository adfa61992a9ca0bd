using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>How hard a mix is sought.</summary>
public sealed record MixSearchOptions
{
    /// <summary>Where the search for gates in steps may stop: (answer − bound)/|answer|; the default is a quarter of a cent on 250 a tonne.</summary>
    public double RelativeGap { get; init; } = 1e-5;

    /// <summary>Longest time for one solve; null for no limit.</summary>
    public TimeSpan? Longest { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>An engine for large problems in place of the search of this room, which is far faster on mixes; for comparison.</summary>
    public LinearEngine? Engine { get; init; }

    internal SolveOptions Solving => new() { RelativeGap = RelativeGap, Longest = Longest, Engine = Engine };
}
