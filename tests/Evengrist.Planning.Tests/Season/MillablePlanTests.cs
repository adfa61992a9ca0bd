using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Planning.Tests.Season;

/// <summary>Plans that can be milled: rules kept, as cheap as trying everything, and every way of stopping.</summary>
public sealed class MillablePlanTests
{
    private static readonly SeasonOptions Exact = new() { RelativeGap = 1e-7, Longest = null };

    private static readonly SeasonSpec Small = Years.Weeks(3, 12.9, Worth("A", 180, 14.4, 300), Worth("B", 90, 13.1, 262), Worth("C", 150, 11.9, 221), Worth("D", 200, 10.8, 190)) is var spec
        ? spec with { Flours = [spec.Flours[0] with { MostGates = 2, LeastShare = 0.45 }], StoragePerTonneWeek = 0.35 } : null!;

    private static SeasonWheat Worth(string code, double tonnes, double protein, double end) => Years.Wheat(code, tonnes, protein) with { EndValuePerTonne = end };

    [Fact]
    public void Polish_SmallSeason_IsAsCheapAsTryingEveryPairOfWheats()
    {
        var best = double.PositiveInfinity;
        string[] codes = ["A", "B", "C", "D"];
        string[][] pairs = [.. codes.SelectMany((a, i) => codes.Skip(i + 1).Select(b => new[] { a, b })), .. codes.Select(c => new[] { c })];
        foreach (var choice in from x in pairs from y in pairs from z in pairs select new[] { x, y, z })
        {
            // Out of a mix: nothing of it; in it: at least 0.45 of it.
            var choices = choice.SelectMany((pair, t) => codes.Select(c => pair.Contains(c) ? (SeasonChoice)new ShareChoice(c, "WB", t, 0.45, 1) : new UseChoice(c, "WB", t, 0, 0)));
            best = Math.Min(best, Years.Linear(Small with { Choices = [.. choices] }).Costs.Total);
        }

        var plan = Years.Planned(SeasonPlanner.Polish(Small, Exact));
        Assert.True(plan.IsMillable);
        Assert.Equal(best, plan.Costs.Total, 1e-4 * Math.Abs(best));
    }

    [Fact]
    public void Millable_MadeSeason_KeepsGatesSharesAndCampaigns()
    {
        var made = MadeSeason.Of(2, weeks: 5, bins: 8, flours: 3);
        var spec = made with { Units = [.. made.Units.Select(u => u with { LeastCampaignHours = 12 })], Flours = [.. made.Flours.Select(f => f with { StockMost = 300 })] };
        var plan = Years.Planned(SeasonPlanner.Millable(spec, new SeasonOptions { RelativeGap = 0.01, Longest = null }));
        Assert.True(plan.IsMillable);
        Assert.All(plan.Uses.GroupBy(u => (u.Flour, u.Period)), g =>
        {
            Assert.InRange(g.Count(), 1, 4);
            Assert.All(g, u => Assert.True(u.Tonnes >= 0.05 * g.Sum(x => x.Tonnes) * (1 - 1e-6)));
        });
        Assert.All(plan.Flours.Where(f => f.WheatTonnes > 0), f => Assert.True(f.Hours >= 12 * (1 - 1e-6)));
        Assert.True(plan.Bound <= plan.Costs.Total);
        Assert.NotNull(plan.Duals);
    }

    /// <summary>Half a year of eight bins: the plan is within a thousandth of what no plan can cost less than, keeps its rules, and passes the check that knows no solver.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Polish_HalfAYear_ComesToAThousandthOfTheBound(int seed)
    {
        var spec = MadeSeason.Of(seed, weeks: 26, bins: 8, flours: 4);
        var plan = Years.Planned(SeasonPlanner.Polish(spec, new SeasonOptions { RelativeGap = 0.001, Longest = TimeSpan.FromMinutes(5) }));
        Assert.InRange(plan.Gap, 0, 0.001);
        Assert.Empty(SeasonCheck.Of(plan));
        Assert.All(plan.Uses.GroupBy(u => (u.Flour, u.Period)), g =>
        {
            Assert.InRange(g.Count(), 1, 4);
            Assert.All(g, u => Assert.True(u.Tonnes >= 0.05 * g.Sum(x => x.Tonnes) * (1 - 1e-6)));
        });
    }

    [Fact]
    public void Millable_NoRules_IsTheLinearPlan()
    {
        var plan = Years.Planned(SeasonPlanner.Millable(Small with { Flours = [Small.Flours[0] with { MostGates = null, LeastShare = 0 }] }));
        Assert.True(plan.IsMillable);
        Assert.Equal(SeasonExit.Optimal, plan.Exit);
    }

    [Fact]
    public void Millable_WideGap_SaysGapReached()
    {
        var plan = Years.Planned(SeasonPlanner.Millable(Small, new SeasonOptions { RelativeGap = 0.9, Longest = null }));
        Assert.True(plan.Exit == SeasonExit.GapReached, $"{plan.Exit}, {plan.Costs.Total} above {plan.Bound}");
    }

    [Fact]
    public void Millable_NoTimeLeft_GivesThePlanAtHandAndSaysSo()
    {
        var plan = Years.Planned(SeasonPlanner.Millable(Small, new SeasonOptions { RelativeGap = 0, Longest = TimeSpan.Zero }));
        Assert.Equal(SeasonExit.TimeReached, plan.Exit);
        Assert.True(plan.Gap > 0);
    }

    [Fact]
    public void Polish_Stopped_GivesTheBestPlanSoFar()
    {
        using var stop = new CancellationTokenSource();
        var seen = new List<SeasonProgress>();
        var plan = Years.Planned(SeasonPlanner.Polish(Small, Exact, new Told(p =>
        {
            seen.Add(p);
            if (seen.Count == 2)
            {
                stop.Cancel();
            }
        }), stop.Token));
        Assert.Equal(SeasonExit.Cancelled, plan.Exit);
        Assert.True(double.IsPositiveInfinity(seen[0].Gap) && seen[1].Gap > 0);
    }

    [Fact]
    public void Polish_RulesAndChoicesThatClash_IsInfeasible()
    {
        SeasonChoice[] three = [.. new[] { "A", "B", "C" }.Select(w => new UseChoice(w, "WB", 0, 21, 40))];
        Assert.Contains("most gates", Assert.IsType<SeasonInfeasible>(SeasonPlanner.Polish(Small with { Choices = three }, Exact)).Clash.Single(), StringComparison.Ordinal);
    }

    [Fact]
    public void Worth_OfStrongWheat_MakesTheYearsMixTakeNoMoreOfIt()
    {
        // Once the strong wheat runs short its worth to the year is well above 10 a tonne, and the bins of the day are priced by it.
        var plan = Years.Linear(StarveDateTests.Spec(13.9, 6_900));
        Assert.True(new SeasonWorth(plan).Of("HS") >= 10);
        Assert.Equal(Property.Protein, SeasonCoverModel.Of(plan).Single().Limiting);
    }

    private sealed class Told(Action<SeasonProgress> told) : IProgress<SeasonProgress>
    {
        public void Report(SeasonProgress value) => told(value);
    }
}
