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
        var frame = new FutureFrame(Asked);
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
}
