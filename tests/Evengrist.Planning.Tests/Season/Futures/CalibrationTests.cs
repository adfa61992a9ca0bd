using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Season;
using Evengrist.Season.Futures;
using Evengrist.Season.Terms;
using MathNet.Numerics.Distributions;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>Promises against crop years of the hidden truth: a small seeded run; the long one is in bench.</summary>
public sealed class CalibrationTests
{
    private const int Years = 48, Lots = 60, Told = 15;

    [Fact]
    public void Statements_OfHiddenYears_HoldAsOftenAsTheySay()
    {
        var t = Student(told: null, out var statements);
        Assert.True(statements >= 2 * Years, $"{statements} statements");

        // Student's t of a year's mean of held − stated: years are independent, flours and weeks of one year are not. Two-sided, 1 in 100; the seeds are fixed.
        Assert.InRange(t, -Limit, Limit);
    }

    [Theory]
    [InlineData(0.25)]
    [InlineData(4)]
    public void Statements_OfSpreadsFarTooSmallOrLarge_AreFoundOut(double by)
    {
        var t = Student(terms => Scaled(terms, by), out _);
        Assert.True(by < 1 ? t < -Limit : t > Limit, $"spreads × {by}: t {t:0.0}");
    }

    [Fact]
    public void Lots_OfHiddenYears_LieAsFarFromTheirDistrictAsFuturesDrawThem()
    {
        // Fisher's F, two-sided, 1 in 100: each year tells the mill its spreads by 15 values.
        var (least, most) = (FisherSnedecor.InvCDF(Lots * Told, Lots * Told, 0.005), FisherSnedecor.InvCDF(Lots * Told, Lots * Told, 0.995));
        Assert.All(Ratios(terms => terms), wheat => Assert.InRange(wheat.Value, least, most));
        Assert.All(Ratios(OneSpreadForAll), wheat => Assert.True(wheat.Value > most, $"{wheat.Key} {wheat.Value:0.00}"));
    }

    private static double Limit => StudentT.InvCDF(0, 1, Years - 1, 0.995);

    private static double Student(Func<SeasonTerms, SeasonTerms>? told, out int count)
    {
        SimulatedYears.Statement[][] years = [.. Enumerable.Range(1, Years).AsParallel().AsOrdered().Select(y => SimulatedYears.Year(y, 80, cores: 1, told).ToArray())
            .Select(all => new[] { 0.7, 0.85, 0.95 }.SelectMany(at => SimulatedYears.Nearest(all, at, 0.1)).ToArray()).Where(s => s.Length > 0)];
        count = years.Sum(y => y.Length);
        double[] off = [.. years.Select(y => y.Average(s => (s.Held ? 1 : 0) - s.Stated))];
        var mean = off.Average();
        return mean / Math.Sqrt(off.Sum(x => (x - mean) * (x - mean)) / (off.Length - 1) / off.Length);
    }

    // Variance of the true protein of a wheat's lots about their own year's mean: what comes over what futures draw.
    private static Dictionary<string, double> Ratios(Func<SeasonTerms, SeasonTerms> told)
    {
        var planned = ((SeasonPlanned)SeasonPlanner.Linear(MillYear.Spec(MillYear.Terms, days: 0))).Plan;
        var (came, drawn) = (new Dictionary<string, double>(), new Dictionary<string, double>());
        for (var year = 1; year <= Lots; year++)
        {
            var truth = new HiddenTruth(year);
            var terms = told(truth.Told(MillYear.Terms, Told));
            var frame = new FutureFrame(FuturesFromTerms.Of(planned with { Spec = MillYear.Spec(terms, days: 0) }, terms, 2, year));
            Add(came, frame, truth.Year(frame));
            Add(drawn, frame, FutureModel.Draw(frame, 0));
        }

        return came.ToDictionary(c => c.Key, c => c.Value / drawn[c.Key]);
    }

    private static void Add(Dictionary<string, double> sums, FutureFrame frame, FutureWorld world)
    {
        var protein = frame.Properties.ToList().IndexOf(Property.Protein);
        foreach (var lots in world.Lots.Where(l => l.Period >= 0 && l.Tonnes > 0).GroupBy(l => frame.Wheats[l.Wheat].Code))
        {
            var mean = lots.Average(l => l.True[protein]);
            sums[lots.Key] = sums.GetValueOrDefault(lots.Key) + (lots.Sum(l => (l.True[protein] - mean) * (l.True[protein] - mean)) / (lots.Count() - 1));
        }
    }

    private static SeasonTerms OneSpreadForAll(SeasonTerms terms) => terms with { Arrivals = [.. terms.Arrivals.Select(a => a with { Quality = [.. a.Quality.Select(q => q with { TruckSpread = 0 })] })] };

    private static SeasonTerms Scaled(SeasonTerms terms, double by) => terms with
    {
        Arrivals = [.. terms.Arrivals.Select(a => a with { TonnesSpread = a.TonnesSpread * by, Quality = [.. a.Quality.Select(q => q with { Spread = q.Spread * by, TruckSpread = q.TruckSpread * by, YearSpread = q.YearSpread * by })] })],
        Flours = [.. terms.Flours.Select(f => f with { YearShare = f.YearShare * by, WeekShare = f.WeekShare * by })],
        Instruments = [.. terms.Instruments.Select(i => i with { Shared = i.Shared * by, Drift = i.Drift * by })],
    };
}
