namespace Evengrist.Season;

/// <summary>How one plan differs from another.</summary>
/// <param name="Cost">Cost of the second less that of the first, money.</param>
/// <param name="Flours">By flour.</param>
/// <param name="Wheats">By wheat and offer.</param>
public sealed record PlanChange(double Cost, IReadOnlyList<FlourChange> Flours, IReadOnlyList<WheatChange> Wheats)
{
    /// <summary>What the second plan changes against the first; the two may be of different specs, and what only one of them has counts as 0 in the other.</summary>
    public static PlanChange Of(SeasonPlan first, SeasonPlan second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var (a, b) = (SeasonCoverModel.Of(first).ToDictionary(c => c.Flour), SeasonCoverModel.Of(second).ToDictionary(c => c.Flour));
        var flours = a.Keys.Union(b.Keys).Order(StringComparer.Ordinal).Select(f => new FlourChange(
            f, (b.GetValueOrDefault(f)?.Weeks - a.GetValueOrDefault(f)?.Weeks) * 7, (b.GetValueOrDefault(f)?.UnmetTonnes ?? 0) - (a.GetValueOrDefault(f)?.UnmetTonnes ?? 0), (b.GetValueOrDefault(f)?.MissedTonnes ?? 0) - (a.GetValueOrDefault(f)?.MissedTonnes ?? 0)));
        return new PlanChange(second.Costs.Total - first.Costs.Total, [.. flours], [.. WheatsOf(first, second)]);
    }

    private static IEnumerable<WheatChange> WheatsOf(SeasonPlan first, SeasonPlan second)
    {
        static Dictionary<string, double> Drawn(SeasonPlan plan) => plan.Uses.GroupBy(u => u.Wheat).ToDictionary(g => g.Key, g => g.Sum(u => u.Tonnes));
        static Dictionary<string, double> Bought(SeasonPlan plan) => plan.Purchases.GroupBy(p => p.Offer).ToDictionary(g => g.Key, g => g.Sum(p => p.Tonnes));
        var (drawnA, drawnB, boughtA, boughtB) = (Drawn(first), Drawn(second), Bought(first), Bought(second));
        return drawnA.Keys.Union(drawnB.Keys).Union(boughtA.Keys).Union(boughtB.Keys).Order(StringComparer.Ordinal)
            .Select(w => new WheatChange(w, drawnB.GetValueOrDefault(w) - drawnA.GetValueOrDefault(w), boughtB.GetValueOrDefault(w) - boughtA.GetValueOrDefault(w)));
    }
}

/// <summary>How a flour fares differently.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="CoverDays">Days of cover gained, below 0 for lost; null where only one plan has the flour.</param>
/// <param name="UnmetTonnes">More flour not made, t.</param>
/// <param name="MissedTonnes">More wheat mix that misses a limit, t.</param>
public sealed record FlourChange(string Flour, double? CoverDays, double UnmetTonnes, double MissedTonnes);

/// <summary>How a wheat is used differently.</summary>
/// <param name="Wheat">Code of the wheat or offer.</param>
/// <param name="DrawnTonnes">More drawn over the year, t.</param>
/// <param name="BoughtTonnes">More bought, t.</param>
public sealed record WheatChange(string Wheat, double DrawnTonnes, double BoughtTonnes);
