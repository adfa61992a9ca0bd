using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Bench.Season;

/// <summary>The same year decided one week at a time: each week's linear plan, with wheat left over at a given worth.</summary>
internal static class WeekByWeek
{
    /// <summary>What the year costs, as the whole counts it.</summary>
    /// <param name="spec">The year.</param>
    /// <param name="worth">What a t of a wheat left at the end of a week is taken to be worth.</param>
    public static double Cost(SeasonSpec spec, Func<string, int, double> worth)
    {
        var stocks = spec.AllWheats.ToDictionary(w => w.Code, w => w.OpeningTonnes);
        var bought = spec.Offers.ToDictionary(o => o.Code, _ => 0.0);
        var flour = spec.Flours.ToDictionary(f => f.Code, f => f.OpeningTonnes);
        var cost = 0.0;
        using var open = new OpenSeason();
        for (var t = 0; t < spec.Periods.Count; t++)
        {
            var period = t;
            SeasonWheat Now(SeasonWheat w, bool offered) => w with
            {
                OpeningTonnes = offered ? 0 : stocks[w.Code] + w.Deliveries.Where(d => d.Period == period).Sum(d => d.Tonnes), Deliveries = [], EndValuePerTonne = worth(w.Code, period),
            };
            // What was bought earlier and lies there is a wheat of its own, so that an offer has no opening.
            SeasonWheat[] kept = [.. spec.Offers.Where(o => stocks[o.Code] > 1e-6).Select(o => o.Wheat with { Code = o.Code + " kept", OpeningTonnes = stocks[o.Code], EndValuePerTonne = worth(o.Code, period) })];
            var week = spec with
            {
                Periods = [spec.Periods[t]],
                Units = [.. spec.Units.Select(u => u with { Hours = [u.Hours[period]] })],
                Wheats = [.. spec.Wheats.Select(w => Now(w, false)), .. kept],
                Offers = [.. spec.Offers.Where(o => period >= o.First && period <= o.Last).Select(o => o with { Wheat = Now(o.Wheat, true), First = 0, Last = 0, TotalTonnes = o.TotalTonnes - bought[o.Code] })],
                Flours = [.. spec.Flours.Select(f => f with { Demand = [f.Demand[period]], OpeningTonnes = flour[f.Code] })],
                CarryOut = t == spec.Periods.Count - 1 ? spec.CarryOut : [],
            };
            if (open.Solve(week) is not SeasonPlanned { Plan: var plan })
            {
                return double.NaN;
            }

            var (a, b) = (SeasonPrices.At(t, spec.Periods.Count), plan.Costs);
            cost += b.Purchases + b.Storage + b.Relief + (a * (b.Misses + b.Unmet)) - b.ByProducts;
            var left = plan.Stocks.ToDictionary(s => s.Wheat, s => s.Tonnes);
            foreach (var code in stocks.Keys.ToArray())
            {
                stocks[code] = left.GetValueOrDefault(code) + left.GetValueOrDefault(code + " kept");
            }

            plan.Purchases.ToList().ForEach(p => bought[p.Offer] += p.Tonnes);
            plan.Flours.ToList().ForEach(f => flour[f.Flour] = f.StockTonnes);
        }

        return cost - spec.AllWheats.Sum(w => stocks[w.Code] * w.EndValuePerTonne);
    }
}
