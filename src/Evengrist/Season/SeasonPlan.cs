namespace Evengrist.Season;

/// <summary>A plan of the crop year. Rows of nothing are left out.</summary>
/// <remarks>Only plans that have passed <c>SeasonCheck</c> are shown. Model: docs/model/season.md.</remarks>
/// <param name="Spec">What it was made from.</param>
/// <param name="Version">What people call it: a date, a word; empty until it is kept.</param>
public sealed record SeasonPlan(SeasonSpec Spec, string Version)
{
    /// <summary>Wheat into flour.</summary>
    public required IReadOnlyList<PlannedUse> Uses { get; init; }

    /// <summary>Wheat bought.</summary>
    public required IReadOnlyList<PlannedPurchase> Purchases { get; init; }

    /// <summary>Wheat in store at the end of each period.</summary>
    public required IReadOnlyList<PlannedStock> Stocks { get; init; }

    /// <summary>Flour made, wanted and in store; one row for every flour and period.</summary>
    public required IReadOnlyList<PlannedFlour> Flours { get; init; }

    /// <summary>Limits that are not kept.</summary>
    public required IReadOnlyList<PlannedMiss> Misses { get; init; }

    /// <summary>Relaxations made use of.</summary>
    public required IReadOnlyList<PlannedRelief> Reliefs { get; init; }

    /// <summary>What it costs.</summary>
    public required SeasonCosts Costs { get; init; }

    /// <summary>No plan can cost less than this, money; where wheats have layers, none that draws them alike.</summary>
    public required double Bound { get; init; }

    /// <summary>Why planning stopped.</summary>
    public required SeasonExit Exit { get; init; }

    /// <summary>Time it took.</summary>
    public required TimeSpan Took { get; init; }

    /// <summary>Whether it keeps most gates, least shares and campaigns, and so can be milled as it stands; a linear plan may not.</summary>
    public required bool IsMillable { get; init; }

    /// <summary>Qualities reckoned with where wheats have layers; a wheat that has no row has the quality of its spec throughout.</summary>
    public IReadOnlyList<PlannedQuality> Qualities { get; init; } = [];

    /// <summary>Whether any wheat has layers, so that quality hangs on the order of draws.</summary>
    public bool HasLayers => Qualities.Count > 0;

    /// <summary>What scarce things are worth; null where none was reckoned.</summary>
    public SeasonDuals? Duals { get; init; }

    /// <summary>Where bins have layers: the most by which a property of a wheat as planned still differs from that of the layers the plan draws, in units of the property; 0 without layers.</summary>
    public double LayerDifference { get; init; }

    /// <summary>(cost − bound)/|cost|, a share; 0 where it is proven best.</summary>
    public double Gap => Costs.Total - Bound <= 1e-9 * Math.Max(1, Math.Abs(Costs.Total)) ? 0 : (Costs.Total - Bound) / Math.Max(1e-12, Math.Abs(Costs.Total));

    /// <summary>Whether every flour is made in full and keeps every limit, with no miss and no relief.</summary>
    public bool IsOnSpec => Misses.Count == 0 && Reliefs.Count == 0 && Flours.All(f => f.UnmetTonnes == 0);
}
