using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>How hard a mix is sought.</summary>
public sealed record MixSearchOptions
{
    /// <summary>Where a solver of whole steps may stop: (answer − bound)/|answer|; the default is a hundredth of a cent on a few hundred a tonne.</summary>
    public double RelativeGap { get; init; } = 1e-7;

    /// <summary>Longest time for one solve; null for no limit.</summary>
    public TimeSpan? Longest { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>The engine for whole steps; null takes the usual one.</summary>
    public LinearEngine? Engine { get; init; }

    internal SolveOptions Solving => new() { RelativeGap = RelativeGap, Longest = Longest, Engine = Engine };
}
