using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>The rule by which futures are milled, beside what it stands in for.</summary>
public sealed class RuleTests
{
    private static readonly FuturesSpec Asked = SimulatedYears.Asked(1, 60).Asked;

    [Fact]
    public void Rule_BesideTheYearPlannedAnewEachWeek_HoldsFloursAboutAsLong()
    {
        // The linear plan of the rest of the year, made anew every week from what is believed then, is the measure. Five weeks of 42 either way are [design]: before hours were shared by
        // need, and while slivers of wheat could spoil the worth of their class, the rule was 10 to 20 weeks short.
        var frame = new FutureFrame(Asked);
        var pairs = Enumerable.Range(0, 4).AsParallel().Select(i => FutureModel.Draw(frame, i)).Select(w => (Rule: FutureMill.Run(frame, w), Anew: FutureMill.Run(frame, w, new PlannedAnew(frame).Decide))).ToArray();
        var weeks = pairs.SelectMany(p => p.Rule.Flours.Zip(p.Anew.Flours, (rule, anew) => rule.Off - anew.Off)).Average();
        Assert.InRange(weeks, -5, 5);
    }

    [Fact]
    public void Rule_WhileHoursSuffice_MakesEveryFlourInFull()
    {
        // So dear that no miss of a limit is cheaper than to leave flour unmade: then hours alone can keep it from being made.
        var plan = Asked.Plan;
        var frame = new FutureFrame(Asked with { Plan = plan with { Spec = plan.Spec with { Flours = [.. plan.Spec.Flours.Select(f => f with { UnmetPricePerTonne = 100_000 })] } } });
        var season = frame.Season;
        for (var i = 0; i < 60; i++)
        {
            var world = FutureModel.Draw(frame, i);
            var year = FutureMill.Run(frame, world);
            foreach (var (f, fate) in year.Flours.Index().Where(x => x.Item.Off < season.Periods.Count && x.Item.Limiting is null))
            {
                var unit = season.Units.Single(u => u.Code == season.Flours[f].Unit);
                double Needed(int t) => season.Flours.Select((flour, n) => flour.Unit == unit.Code ? world.Demand[n][t] / flour.Yield : 0).Sum() / (unit.Hours[t] * unit.TonnesPerHour);
                Assert.True(Enumerable.Range(0, fate.Off + 1).Any(t => Needed(t) > 0.999), $"future {i}: {season.Flours[f].Code} was not made in full in week {fate.Off}, and the hours sufficed every week before");
            }
        }
    }

    [Fact]
    public void Rule_LayersThatDiffer_MissesNothingThatItBelievesItKeeps()
    {
        // 20 layers of 75 t, one weaker and one stronger in turn; a week draws about 67 t of them, so that it goes across a border nearly every time. There is strong wheat for all of the year, so whoever looks at what
        // is drawn keeps 13 % to the hundredth; a mix made by the first tonnes alone is up to 0.4 % off.
        var low = Years.Wheat("LOW", 1500, 12) with { Layers = [.. Enumerable.Range(0, 20).Select(i => new SeasonLayer(75, 12, Years.Protein(i % 2 == 0 ? 11.4 : 12.6)))] };
        var season = Years.Weeks(20, 13, low, Years.Wheat("HIGH", 1500, 15));
        var frame = new FutureFrame(new FuturesSpec(Years.Linear(season), 2, 7) { Tolerances = [new(Property.Protein, 0.01)] });
        Assert.Equal(season.Periods.Count, FutureMill.Run(frame, FutureModel.Draw(frame, 0)).Flours[0].Off);
    }

    [Fact]
    public void Rule_BeforeADayTheUnitStandsStill_HasTwoDeviationsMoreInStore()
    {
        // The plan has its store run out to the tonne on the day without hours, so that demand above what is expected (every second future) would leave flour unmade. Two standard deviations more in store leave 1 − Φ(2) = 2.3 of 100.
        var days = Years.Weeks(14, 12, Years.Wheat("LOW", 3000, 12.5));
        days = days with { Units = [new("A", 10, [.. Enumerable.Range(0, 14).Select(d => d == 6 ? 0.0 : 30.0)])], Flours = [days.Flours[0] with { StockMost = 150 }] };
        var frame = new FutureFrame(new FuturesSpec(Years.Linear(days), 2, 7) { Demands = [new("WB", 0.03, 0.04)] });
        var off = Enumerable.Range(0, 1000).Count(i => FutureMill.Run(frame, FutureModel.Draw(frame, i)).Flours[0].Off == 6);
        Assert.InRange(off / 1000.0, 0.005, 0.04);
    }
}
