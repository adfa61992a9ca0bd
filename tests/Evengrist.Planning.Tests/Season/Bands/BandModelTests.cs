using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Bands;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Bands;
using MathNet.Numerics.Distributions;

namespace Evengrist.Planning.Tests.Season.Bands;

public sealed class BandModelTests
{
    private static BandSpec Spec(int bins, double reading = 0.25) => new("HW", [Part("North", 20000, 12.2, 0.7), Part("Rim", 6000, 14, 0.8)], bins) { ReadingSpread = reading, Step = 0.25 };

    private static HarvestPart Part(string district, double tonnes, double protein, double spread, double fn = 380) => new(district, tonnes, 12, new(new Dictionary<Property, SeasonValue>
    {
        [Property.Protein] = new(protein, spread, Basis.At12),
        [Property.FallingNumber] = new(fn, 40),
    }));

    // A price that bends at 13 %: what lies above is worth more by the point.
    private static double Price(SeasonQuality quality, double moisture) => 220 + (40 * Math.Max(0, quality.Values[Property.Protein].Value - 13)) + (10 * Math.Max(0, quality.Values[Property.Protein].Value - 12));

    [Fact]
    public void Design_AnyNumberOfBands_KeepsTonnesAndProtein()
    {
        foreach (var design in BandModel.Design(Spec(5), Price))
        {
            Assert.Equal(26000, design.Bands.Sum(b => b.Tonnes), 6);
            Assert.Equal(((20000 * 12.2) + (6000 * 14)) / 26000, design.Bands.Sum(b => b.Tonnes * b.Quality.Values[Property.Protein].Value) / 26000, 6);
        }
    }

    [Fact]
    public void Design_MoreBins_IsNeverWorthLess()
    {
        double[] worth = [.. BandModel.Design(Spec(6), Price).Select(d => d.Worth)];
        Assert.Equal(6, worth.Length);
        Assert.All(worth.Zip(worth.Skip(1)), x => Assert.True(x.Second >= x.First - 1e-6));
        Assert.True(worth[1] > worth[0] + 1000);
    }

    [Fact]
    public void Design_TwoBands_IsTheBestOfEveryEdgeTriedByHand()
    {
        // With perfect readings the mean above an edge is that of a cut normal: μ + σ·φ(a)/(1 − Φ(a)), textbook.
        var spec = Spec(2, reading: 0);
        var best = double.NegativeInfinity;
        for (var edge = 9.0; edge < 18; edge += 0.25)
        {
            var (above, points, all) = (0.0, 0.0, 0.0);
            foreach (var (tonnes, mean, sd) in new[] { (20000.0, 12.2, 0.7), (6000.0, 14.0, 0.8) })
            {
                var a = (edge - mean) / sd;
                above += tonnes * (1 - Normal.CDF(0, 1, a));
                points += tonnes * (((1 - Normal.CDF(0, 1, a)) * mean) + (sd * Normal.PDF(0, 1, a)));
                all += tonnes * mean;
            }

            double Worth(double tonnes, double sum) => tonnes < 1e-6 ? 0 : tonnes * (220 + (40 * Math.Max(0, (sum / tonnes) - 13)) + (10 * Math.Max(0, (sum / tonnes) - 12)));
            best = Math.Max(best, Worth(above, points) + Worth(26000 - above, all - points));
        }

        Assert.Equal(best, BandModel.Design(spec, Price)[^1].Worth, 1.0);
    }

    [Fact]
    public void Design_WorseReadings_PartLessWellAndLetMoreStray()
    {
        var (sharp, dull) = (BandModel.Design(Spec(3, 0), Price)[^1], BandModel.Design(Spec(3, 0.6), Price)[^1]);
        Assert.True(dull.Worth < sharp.Worth);
        Assert.All(sharp.Bands, b => Assert.Equal(0, b.Strays, 9));
        Assert.All(dull.Bands, b => Assert.InRange(b.Strays, 0.001, 0.999));
        Assert.True(BandModel.Even(Spec(3, 0), 3, Price).Worth <= sharp.Worth + 1e-6);
    }

    [Fact]
    public void Design_PartedByFallingNumber_PutsSproutedWheatApart()
    {
        var spec = Spec(3) with { Parts = [Part("North", 20000, 12.2, 0.7), Part("Lowmere", 6000, 11.1, 0.8, 262)], FallingNumberEdges = [300], FallingNumberReadingSpread = 10 };
        var bands = BandModel.Design(spec, (q, _) => q.Values[Property.FallingNumber].Value < 320 ? 180 : 230)[^1].Bands;
        Assert.Equal(26000, bands.Sum(b => b.Tonnes), 4);
        Assert.All(bands.Where(b => b.FallingNumberTo <= 300), b => Assert.True(b.Quality.Values[Property.FallingNumber].Value < 300));
        Assert.All(bands.Where(b => b.FallingNumberFrom >= 300), b => Assert.True(b.Quality.Values[Property.FallingNumber].Value > 320));
    }

    [Fact]
    public void Reckon_CostOfTheYear_FallsWithBandsAndACommingledBinCosts()
    {
        var season = Years.Weeks(30, 13, Years.Wheat("LOW", 2200, 12.4));
        var rows = Assert.IsType<BandsPlanned>(BandRun.Reckon(new BandSpec("HW", [new("Rim", 1000, 12, new(new Dictionary<Property, SeasonValue> { [Property.Protein] = new(13.2, 0.9, Basis.At12) }))], 3) { ReadingSpread = 0.2 }, season, 230)).Rows;
        Assert.All(rows.Zip(rows.Skip(1)), x => Assert.True(x.Second.Cost <= x.First.Cost + 1e-4));
        Assert.All(rows, r => Assert.True(r.Cost <= r.EvenCost + 1e-4 || r.Design.Bands.Count == 1));
        Assert.True(rows[^1].Commingled!.Cost >= -1e-4);
    }

    [Fact]
    public void Split_BestEdgeOfOneBand_IsTheBestDesignOfTwo()
    {
        var spec = Spec(2);
        var designs = BandModel.Design(spec, Price);
        var split = BandModel.Split(spec, designs[0], Price)!;
        Assert.Equal(designs[1].Bands.Select(b => b.From), split.Bands.Select(b => b.From));
        Assert.Equal(26000, split.Bands.Sum(b => b.Tonnes), 6);
        Assert.Null(BandModel.Split(spec with { Step = 5, Parts = [Part("North", 20000, 12.2, 0.1)], ReadingSpread = 0 }, BandModel.Design(spec with { Step = 5, Parts = [Part("North", 20000, 12.2, 0.1)], ReadingSpread = 0, Bins = 1 }, Price)[0], Price));
    }

    [Fact]
    public void Reckon_HarvestThatComesOverWeeks_HasLessThereAtOnceAndToldHowFarItIs()
    {
        var season = Years.Weeks(12, 13, Years.Wheat("LOW", 600, 12.4));
        var told = new List<string>();
        var spec = new BandSpec("HW", [new("Rim", 800, 12, new(new Dictionary<Property, SeasonValue> { [Property.Protein] = new(13.4, 0.7, Basis.At12) }))], 2) { ReadingSpread = 0.2, Step = 0.25 };
        var whole = Assert.IsType<BandsPlanned>(BandRun.Reckon(spec, season, 230)).Rows;
        var slow = Assert.IsType<BandsPlanned>(BandRun.Reckon(spec with { Arriving = [.. Enumerable.Repeat(0.1, 10)] }, season, 230, new Telling(told))).Rows;
        Assert.All(whole, r => Assert.Equal(800, r.MostTonnes.Sum(), 6));
        Assert.All(slow, r => Assert.True(r.MostTonnes.Sum() < 700));
        Assert.Contains(told, t => t.StartsWith("2 bands of at most 2: one", StringComparison.Ordinal));
    }

    [Fact]
    public void Reckon_Stopped_SaysSoOrKeepsWhatItHas()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var none = Assert.IsType<BandsNotPlanned>(BandRun.Reckon(Spec(2), Years.Weeks(2, 13, Years.Wheat("LOW", 100, 12)), 0, stop: stop.Token));
        Assert.Equal(SeasonExit.Cancelled, Assert.IsType<SeasonFailed>(none.Why).Exit);
        using var later = new CancellationTokenSource();
        var some = Assert.IsType<BandsPlanned>(BandRun.Reckon(Spec(3), Years.Weeks(2, 13, Years.Wheat("LOW", 100, 12)), 0, new StopAt(later, "2 bands"), later.Token));
        Assert.Single(some.Rows);
    }

    [Theory]
    [InlineData("ZZ", new double[0], "No flour takes ZZ")]
    [InlineData("HW", new[] { 0.5, 0.6 }, "add up to 1")]
    [InlineData("HW", new[] { 0.2, 0.2, 0.6 }, "3 shares for 2 periods")]
    public void Reckon_WhatDoesNotFitTheYear_IsNamed(string wheatClass, double[] arriving, string says)
    {
        var season = Years.Weeks(2, 13, Years.Wheat("LOW", 100, 12));
        season = season with { Flours = [season.Flours[0] with { Classes = ["HW"] }] };
        var none = Assert.IsType<BandsNotPlanned>(BandRun.Reckon(Spec(2) with { WheatClass = wheatClass, Arriving = arriving }, season, 0));
        Assert.Contains(says, string.Join(" ", Assert.IsType<SeasonBadInput>(none.Why).Faults), StringComparison.Ordinal);
    }

    private sealed class Telling(List<string> told) : IProgress<SeasonProgress>
    {
        public void Report(SeasonProgress value) => told.Add(value.Doing);
    }

    private sealed class StopAt(CancellationTokenSource stop, string doing) : IProgress<SeasonProgress>
    {
        public void Report(SeasonProgress value)
        {
            if (value.Doing.StartsWith(doing, StringComparison.Ordinal))
            {
                stop.Cancel();
            }
        }
    }

    [Fact]
    public void Design_BadInput_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => BandModel.Design(Spec(0), Price));
        Assert.Equal(3, BandFaults.Of(new BandSpec("HW", [], 21) { ReadingSpread = -1 }).Count);
        Assert.IsType<BandsNotPlanned>(BandRun.Reckon(Spec(0), Years.Weeks(2, 13, Years.Wheat("LOW", 100, 12)), 0));
    }
}
