using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Season;

/// <summary>Reads from a plan how long each flour lasts. Model: docs/model/season.md.</summary>
public static class SeasonCoverModel
{
    /// <summary>Weeks of cover, starve date and limiting property of every flour.</summary>
    /// <remarks>
    /// A flour starves in the first period in which it is not made in full or misses a limit. Inside that period the day is interpolated: the share that is
    /// made, times the part of the mix that keeps the limit by itself: all wheat on its good side with as much of the rest, the least off first, as that carries.
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

        return made * plan.Misses.Where(m => m.Flour == flour.Code && m.Period == row.Period).Min(m => OnSpec(plan, flour, m));
    }

    // The largest part of what is drawn that keeps the limit by itself: all that lies on its good side, and of the rest what is least off, as far as that reaches.
    private static double OnSpec(SeasonPlan plan, SeasonFlour flour, PlannedMiss miss)
    {
        var side = LimitSide.Of(flour).First(s => s.Limit.What == miss.What && s.IsLeast == miss.IsBelow);
        var qualities = plan.Qualities.Where(q => q.Period == miss.Period).ToDictionary(q => q.Wheat);
        var wheats = plan.Spec.AllWheats.ToDictionary(w => w.Code);
        var drawn = plan.Uses.Where(u => u.Flour == flour.Code && u.Period == miss.Period)
            .Select(u => (u.Tonnes, Off: qualities.TryGetValue(u.Wheat, out var own) ? side.Off(own.MoisturePercent, own.Quality) : side.Off(wheats[u.Wheat].MoisturePercent, wheats[u.Wheat].Quality))).ToArray();
        var (kept, spare) = (drawn.Where(d => d.Off >= 0).Sum(d => d.Tonnes), drawn.Where(d => d.Off >= 0).Sum(d => d.Tonnes * d.Off));
        foreach (var (tonnes, off) in drawn.Where(d => d.Off < 0).OrderByDescending(d => d.Off))
        {
            var taken = Math.Min(tonnes, spare / -off);
            (kept, spare) = (kept + taken, spare + (taken * off));
        }

        return kept / drawn.Sum(d => d.Tonnes);
    }
}
