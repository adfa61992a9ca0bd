namespace Evengrist.Season.Futures;

/// <summary>What a promise of flours is reckoned from: a plan and by how much the world may differ from it.</summary>
/// <remarks>Model: docs/model/season-promise.md. What a wheat in store may be off by is the spread of its quality in the plan; what a delivery or purchase may, that of its own, or of the wheat it joins.</remarks>
/// <param name="Plan">The plan that is followed; its duals say at what value wheat is swapped.</param>
/// <param name="Futures">How many futures are drawn, 2 or more.</param>
/// <param name="Seed">The same seed gives the same futures, however many cores reckon them.</param>
public sealed record FuturesSpec(SeasonPlan Plan, int Futures, long Seed)
{
    /// <summary>What all deliveries of a district have in common.</summary>
    public IReadOnlyList<DistrictSpread> Districts { get; init; } = [];

    /// <summary>By how much demand may differ.</summary>
    public IReadOnlyList<DemandSpread> Demands { get; init; } = [];

    /// <summary>By how much readings may differ from the truth.</summary>
    public IReadOnlyList<InstrumentSpread> Instruments { get; init; } = [];

    /// <summary>By how much a flour may be off a limit and still count as on target; nothing for a property that is not named.</summary>
    public IReadOnlyList<LimitTolerance> Tolerances { get; init; } = [];

    /// <summary>Share of a period's demand that may be wanting and the flour still counts as made, 0 to 1; half a per cent by default [design].</summary>
    public double MadeTolerance { get; init; } = 0.005;

    /// <summary>The probability a promise is stated at, above 0 and below 1.</summary>
    public double Stated { get; init; } = 0.85;
}
