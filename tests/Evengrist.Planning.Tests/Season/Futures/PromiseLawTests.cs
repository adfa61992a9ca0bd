using Evengrist.Ledger;
using Evengrist.Planning.Season.Futures;
using Evengrist.Season;
using Evengrist.Season.Futures;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>What has to hold of any promise.</summary>
public sealed class PromiseLawTests
{
    private static SeasonSpec Small(double strong = 300) => Years.Weeks(20, 13, Years.Wheat("LOW", 1500, 12), Years.Wheat("HIGH", strong, 15) with { Deliveries = [new(2, 100) { District = "North" }] });

    private static FuturesSpec Asked(SeasonSpec season, double spread, int futures = 400, long seed = 7) => new(Years.Linear(season), futures, seed)
    {
        Districts = [new("North", 0.2 * spread) { Quality = [new(Property.Protein, 0.3 * spread)] }],
        Demands = [new("WB", 0.03 * spread, 0.03 * spread)],
        Instruments = [new(Property.Protein, 0.05 * spread, 0.05 * spread)],
        Tolerances = spread > 0 ? [new(Property.Protein, 0.1)] : [],
    };

    private static SeasonPromise Promise(FuturesSpec spec, int? cores = null) => Assert.IsType<Promised>(PromiseRun.Reckon(spec, cores)).Promise;

    [Theory]
    [InlineData(150)]
    [InlineData(300)]
    [InlineData(2000)]
    public void Promise_NoSpread_IsZeroOrOneAndEqualsThePlansCover(double strong)
    {
        var season = Small(strong);
        var cover = SeasonCoverModel.Of(Years.Linear(season))[0];
        var points = Promise(Asked(season, 0, futures: 3)).Flours[0].Points;
        Assert.All(points, p => Assert.True(p.Probability is 0 or 1 && p.StandardError == 0));
        var starves = points.Count(p => p.Probability == 1);
        Assert.Equal(cover.StarveDate is { } date ? season.Periods.TakeWhile(p => p.End <= date).Count() : season.Periods.Count, starves);
    }

    [Fact]
    public void Promise_MoreSpread_NeverSharpens()
    {
        // How far the dates lie apart, in periods: the middle nine tenths of futures.
        int Width(double spread)
        {
            var flour = Promise(Asked(Small(), spread)).Flours[0];
            return (flour.Late ?? 20) - (flour.Early ?? 20);
        }

        int[] widths = [Width(0), Width(0.5), Width(1), Width(2)];
        Assert.Equal(widths.Order(), widths);
        Assert.True(widths[3] > widths[0]);
    }

    [Fact]
    public void Promise_SameSeed_IsTheSameOnAnyNumberOfCores()
    {
        var spec = Asked(Small(), 1, futures: 120);
        var (one, two, other) = (Promise(spec, 1), Promise(spec, 2), Promise(spec with { Seed = 8 }));
        Assert.Equal(one.Flours[0].Points, two.Flours[0].Points);
        Assert.Equal(one.Cost, two.Cost);
        Assert.NotEqual(one.Cost, other.Cost);
    }

    [Fact]
    public void Promise_MoreStockOfWhatIsShort_NeverHoldsLess()
    {
        var (less, more) = (Promise(Asked(Small(300), 1)).Flours[0].Points, Promise(Asked(Small(450), 1)).Flours[0].Points);
        Assert.All(less.Zip(more), pair => Assert.True(pair.Second.Probability >= pair.First.Probability - 0.01, $"period {pair.First.Period}: {pair.First.Probability} to {pair.Second.Probability}"));
        Assert.True(more.Sum(p => p.Probability) > less.Sum(p => p.Probability) + 1);
    }

    [Fact]
    public void Promise_NeverRisesWithTime_AndItsErrorIsThatOfABinomialCount()
    {
        var promise = Promise(Asked(Small(), 1));
        var points = promise.Flours[0].Points;
        Assert.All(points.Zip(points.Skip(1)), pair => Assert.True(pair.Second.Probability <= pair.First.Probability));
        Assert.All(points, p => Assert.Equal(new Binomial(p.Probability, promise.Futures).StdDev / promise.Futures, p.StandardError, 12));
    }

    [Fact]
    public void Draws_Demand_IsNormalByTheTestOfKolmogorov()
    {
        var spec = Asked(Small(), 0, futures: 2) with { Demands = [new("WB", 0, 0.1)] };
        var frame = new FutureFrame(spec);
        double[] z = [.. Enumerable.Range(0, 200).SelectMany(i => FutureModel.Draw(frame, i).Demand[0].Select(d => ((d / 75) - 1) / 0.1)).Order()];
        var furthest = z.Select((x, i) => Math.Max(Math.Abs(Normal.CDF(0, 1, x) - ((double)i / z.Length)), Math.Abs(Normal.CDF(0, 1, x) - ((i + 1.0) / z.Length)))).Max();

        // 1.63/√n is the 1 % point of Kolmogorov's statistic (textbook table); the seed is fixed, so this either holds or does not.
        Assert.True(furthest < 1.63 / Math.Sqrt(z.Length), $"{furthest}");
    }

    [Fact]
    public void Count_StarveBand_IsTheQuantileOfTheEmpiricalDistribution()
    {
        var spec = Asked(Small(), 0, futures: 200);
        int[] off = [.. Enumerable.Range(0, 200).Select(i => i * 7 % 23)];
        var costs = new SeasonCosts(0, 0, 0, 0, 0, 0, 0);
        var flour = PromiseModel.Of(spec, [.. off.Select(t => new FutureYear([new FlourFate(Math.Min(t, 20), t < 20 ? Property.Protein : null, 20)], costs))]).Flours[0];
        double Expected(double share) => off.Select(t => (double)t).QuantileCustom(share, QuantileDefinition.EmpiricalInvCDF);
        Assert.Equal(Expected(0.05), flour.Early!.Value);
        Assert.Equal(Expected(0.5), flour.Middle!.Value);
        Assert.True(Expected(0.95) >= 20);
        Assert.Null(flour.Late);
        Assert.Equal(Property.Protein, flour.Limiting!.What);
    }

    [Fact]
    public void Reckon_Stopped_CountsAnUnbrokenRunOrSaysThereIsNone()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.IsType<PromiseStopped>(PromiseRun.Reckon(Asked(Small(), 1), stop: stop.Token));
    }

    [Fact]
    public void Reckon_BadInput_NamesEveryFault()
    {
        var spec = Asked(Small(), 1) with { Futures = 1, Stated = 1, Demands = [new("XX", -1, 0)], Instruments = [new(Property.Ash, 0, 0)], Districts = [new("South", double.NaN)] };
        var faults = Assert.IsType<NotPromised>(PromiseRun.Reckon(spec)).Faults;
        Assert.Equal(7, faults.Count);
        Assert.Contains(faults, f => f.Where == "demand of XX");
        Assert.Throws<ArgumentException>(() => new FutureFrame(spec));
    }
}
