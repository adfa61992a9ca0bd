namespace Evengrist.Season.Futures;

/// <summary>By how much the world may differ from a plan, and what still counts as on target.</summary>
/// <remarks>Model: docs/model/season-promise.md. What a wheat in store may be off by is the spread of its quality in the season; what a delivery or purchase may, that of its own, or of the wheat it joins, and what its trucks differ by on top.</remarks>
public abstract record FutureSpreads
{
    /// <summary>What all deliveries of a district have in common.</summary>
    public IReadOnlyList<DistrictSpread> Districts { get; init; } = [];

    /// <summary>How far trucks of a wheat differ; a delivery of a wheat that is not named is as uncertain as any other of it, large or small.</summary>
    public IReadOnlyList<TruckSpread> Trucks { get; init; } = [];

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
