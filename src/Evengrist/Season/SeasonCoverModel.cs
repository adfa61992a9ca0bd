using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Season;

/// <summary>Reads from a plan how long each flour lasts. Model: docs/model/season.md.</summary>
public static class SeasonCoverModel
{
    /// <summary>Weeks of cover, starve date and limiting property of every flour.</summary>
    /// <remarks>
    /// A flour starves in the first period in which it is not made in full or misses a limit. Inside that period the day is interpolated: the share that is
    /// made, less the part that misses, which is its amount over the most by which the same limit is missed from then on.
    /// </remarks>
    public static IReadOnlyList<SeasonCover> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [.. plan.Spec.Flours.Select(f => One(plan, f))];
    }

    private static SeasonCover One(SeasonPlan plan, SeasonFlour flour)
    {
        var misses = plan.Misses.Where(m => m.Flour == flour.Code).ToLookup(m => m.Period);
        var rows = plan.Flours.Where(f => f.Flour == flour.Code).OrderBy(f => f.Period).ToArray();
        var (missed, unmet) = (plan.Misses.Where(m => m.Flour == flour.Code).GroupBy(m => m.Period).Sum(g => g.Max(m => m.Tonnes)), rows.Sum(r => r.UnmetTonnes));
        foreach (var row in rows)
        {
            var worst = misses[row.Period].MaxBy(m => m.Cost);
            if (row.UnmetTonnes <= 0 && worst is null)
            {
                continue;
            }

            var days = Kept(plan, flour, row, worst) * plan.Spec.Periods[row.Period].Days;
            var from = plan.Spec.Periods[row.Period].Start;
            var weeks = (Period.DaysBetween(plan.Spec.Start, from) + days) / 7;
            return new SeasonCover(flour.Code, from.PlusDays((int)Math.Floor(days)), weeks, worst?.What ?? Keeping(plan, flour, row.Period), missed, unmet);
        }

        return new SeasonCover(flour.Code, null, Period.DaysBetween(plan.Spec.Start, plan.Spec.End) / 7.0, null, 0, 0);
    }

    // The limit that it would help most to ease, measured by what a miss of it is taken to cost; none where hours or wheat are wanting.
    private static Property? Keeping(SeasonPlan plan, SeasonFlour flour, int period) => plan.Duals?.Limits.Where(l => l.Flour == flour.Code && l.Period == period && l.PerTonneUnit > 1e-6)
        .MaxBy(l => l.PerTonneUnit / LimitSide.Of(flour).First(s => s.Limit.What == l.What && s.IsLeast == l.IsLeast).MissPrice)?.What;

    private static double Kept(SeasonPlan plan, SeasonFlour flour, PlannedFlour row, PlannedMiss? worst)
    {
        var made = flour.Demand[row.Period] > 0 ? 1 - (row.UnmetTonnes / flour.Demand[row.Period]) : 1;
        if (worst is null)
        {
            return made;
        }

        var most = plan.Misses.Where(m => m.Flour == worst.Flour && m.Period >= worst.Period && m.What == worst.What && m.IsBelow == worst.IsBelow).Max(m => m.Amount);
        return Math.Max(0, made * (1 - (worst.Amount / most)));
    }
}
