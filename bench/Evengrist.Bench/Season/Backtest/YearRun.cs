using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>A simulated year milled week by week under a rule for bins and one for mixes.</summary>
internal static class YearRun
{
    /// <summary>What it costs.</summary>
    /// <param name="year">The year.</param>
    /// <param name="bins">Into which bin a truck goes.</param>
    /// <param name="planned">Whether each week is milled as the year planned anew has it; today's least cost at the prices paid otherwise.</param>
    public static YearCost Of(SimulatedYear year, IBinRule bins, bool planned)
    {
        var (store, cost, left) = (new Store(year), new YearCost(), year.Trucks.ToList());
        using var open = new OpenSeason();
        for (var week = 0; week < SimulatedYear.Weeks; week++)
        {
            for (var day = week * SimulatedYear.Days; day < (week + 1) * SimulatedYear.Days && left.Count > 0; day++)
            {
                bins.Begin(day, store);
                foreach (var truck in left.TakeWhile(t => t.Day == day))
                {
                    store.Lay(bins.Of(truck, store), truck.Is);
                    cost = cost with { Harvest = cost.Harvest + (truck.Is.OpeningTonnes * SimulatedYear.Price(truck.Is)) };
                }

                left.RemoveAll(t => t.Day == day);
            }

            var weeks = planned ? SimulatedYear.Weeks - week : 1;
            var comes = planned && week + 1 < SimulatedYear.HarvestWeeks ? Coming(year, week) : [];
            var plan = YearSpec.Solved(open.Solve(YearSpec.Of(year, week, weeks, [.. store.Wheats, .. comes])));
            store.Mill(plan);
            cost = cost.And(plan, 0);
        }

        return cost with { Left = store.Wheats.Sum(w => w.OpeningTonnes * w.EndValuePerTonne) };
    }

    /// <summary>What the year would cost if all were known in advance and wheat of every quality lay apart: in steps of 0.1 points of protein and 20 s of falling number.</summary>
    public static YearCost Foreseen(SimulatedYear year)
    {
        var heaps = year.Trucks.Select(t => t.Is with { Deliveries = [new SeasonDelivery(t.Day / SimulatedYear.Days, t.Is.OpeningTonnes)] })
            .GroupBy(w => (Math.Round(w.Quality.Values[Ledger.Property.Protein].Value, 1), Math.Round(w.Quality.Values[Ledger.Property.FallingNumber].Value / 20)))
            .Select((g, n) => g.Aggregate(g.First() with { OpeningTonnes = 0, Deliveries = [] }, (a, b) => TruckMix.Of(a, b) with { Deliveries = [.. a.Deliveries, .. b.Deliveries] }) with { Code = $"heap {n}", OpeningTonnes = 0 });
        SeasonWheat[] wheats = [.. heaps.Select(h => h with
        {
            EndValuePerTonne = SimulatedYear.Price(h),
            Deliveries = [.. h.Deliveries.GroupBy(d => d.Period).OrderBy(g => g.Key).Select(g => new SeasonDelivery(g.Key, g.Sum(d => d.Tonnes)))],
        })];
        var plan = YearSpec.Solved(SeasonPlanner.Linear(YearSpec.Of(year, 0, SimulatedYear.Weeks, wheats, known: true)));
        var cost = Enumerable.Range(0, SimulatedYear.Weeks).Aggregate(new YearCost(), (sum, week) => sum.And(plan, week));
        return cost with
        {
            Harvest = year.Trucks.Sum(t => t.Is.OpeningTonnes * SimulatedYear.Price(t.Is)),
            Left = plan.Stocks.Where(s => s.Period == SimulatedYear.Weeks - 1).Sum(s => s.Tonnes * plan.Spec.AllWheats.First(w => w.Code == s.Wheat).EndValuePerTonne),
        };
    }

    private static IEnumerable<SeasonWheat> Coming(SimulatedYear year, int week)
    {
        var from = (week + 1) * SimulatedYear.Days;
        return new Forecast(year).After(from).Select(d =>
        {
            var wheat = SimulatedYear.Wheat(d.Name, 0, d.Protein, d.FallingNumber);
            return wheat with { EndValuePerTonne = SimulatedYear.Price(wheat), Deliveries = [.. Forecast.ByWeek(from, d.Tonnes).Select(x => x with { Period = x.Period + 1 })] };
        });
    }
}
