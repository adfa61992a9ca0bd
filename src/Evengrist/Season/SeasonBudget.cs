using NodaTime;

namespace Evengrist.Season;

/// <summary>What of a wheat is to be drawn and bought in a month.</summary>
/// <param name="Wheat">Code of the wheat or offer.</param>
/// <param name="Home">Code of its bin; empty for none.</param>
/// <param name="Month">The month.</param>
/// <param name="DrawnTonnes">Drawn in it, t; a week that lies in two months is split by its days.</param>
/// <param name="BoughtTonnes">Bought in it, t.</param>
public sealed record SeasonBudget(string Wheat, string Home, YearMonth Month, double DrawnTonnes, double BoughtTonnes)
{
    /// <summary>The budget of a plan, by wheat and month; months without any are left out.</summary>
    public static IReadOnlyList<SeasonBudget> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var homes = plan.Spec.AllWheats.ToDictionary(w => w.Code, w => w.Home);
        var drawn = plan.Uses.Select(u => (u.Wheat, u.Period, Drawn: u.Tonnes, Bought: 0.0));
        var bought = plan.Purchases.Select(p => (Wheat: p.Offer, p.Period, Drawn: 0.0, Bought: p.Tonnes));
        return [.. drawn.Concat(bought)
            .SelectMany(r => Months(plan.Spec.Periods[r.Period]).Select(m => (r.Wheat, m.Month, Drawn: r.Drawn * m.Share, Bought: r.Bought * m.Share)))
            .GroupBy(r => (r.Wheat, r.Month))
            .Select(g => new SeasonBudget(g.Key.Wheat, homes[g.Key.Wheat], g.Key.Month, g.Sum(r => r.Drawn), g.Sum(r => r.Bought)))
            .OrderBy(b => b.Wheat, StringComparer.Ordinal).ThenBy(b => b.Month)];
    }

    private static IEnumerable<(YearMonth Month, double Share)> Months(SeasonPeriod period) =>
        Enumerable.Range(0, period.Days).Select(d => period.Start.PlusDays(d).ToYearMonth()).GroupBy(m => m).Select(g => (g.Key, g.Count() / (double)period.Days));
}
