using Evengrist.Packing.NetContent;
using NodaTime;

namespace Evengrist.Tests.Packing.NetContent;

public sealed class WeighedHourTests
{
    private static readonly Instant Ten = Instant.FromUtc(2026, 1, 14, 10, 0);

    [Fact]
    public void With_FilesThatOverlap_CountEachPackageOnce()
    {
        var (first, second) = (Hour((1, 252000), (1, 252000), (2, 251900)), Hour((2, 251900), (1, 252000), (3, 251800)));
        var both = first.With(second);
        Assert.Equal([1, 1, 2, 3], both.Packages.Select(p => (int)(p.At - Ten).TotalSeconds));
        Assert.Equal(both.Packages, second.With(first).Packages);
        Assert.Equal(both.Packages, both.With(first).With(both).Packages);
        Assert.Throws<ArgumentException>(() => first.With(second with { Line = "L2" }));
    }

    [Fact]
    public void Of_Hours_TogetherAreTheStatisticsOfAllPackages()
    {
        // Derived: the twelve errors of the worked case of docs/model/net-content.md cut in two hours; all twelve together have mean -0.010 and s 0.0185864 (here in units of 0.01: tenths of a gram).
        int[] errors = [-20, 10, -30, -10, 20, -40, 0, -20, 10, -10, -30, 0];
        HourOfWeights[] hours = [HourOfWeights.Of(Hour([.. errors[..5].Select((e, i) => (i, 22680 + e))]))!, HourOfWeights.Of(Hour([.. errors[5..].Select((e, i) => (i, 22680 + e))]))!];
        var (count, mean, deviation) = HourOfWeights.Together(hours)!.Value;
        Assert.Equal(12, count);
        Assert.Equal(2267.0 - 18, mean, 1e-6);
        Assert.Equal(1.85864, deviation, 1e-5);
        Assert.Null(HourOfWeights.Together([]));
        Assert.Null(HourOfWeights.Of(new WeighedHour("L1", "WB-2", Ten, [new(Ten, 20000, 180, true)])));
    }

    [Fact]
    public void Sample_OfAnHour_IsSpreadOverIt()
    {
        var hour = Hour([.. Enumerable.Range(0, 100).Select(i => (i, 20000 + i))]);
        Assert.Equal([5, 15, 25, 35, 45, 55, 65, 75, 85, 95], hour.Sample(10).Select(p => p.GrossTenths - 20000));
        Assert.Equal(hour.Passed, hour.Sample(100));
        Assert.Throws<ArgumentOutOfRangeException>(() => hour.Sample(101));
    }

    [Fact]
    public void Tare_ThatDrifted_IsContradictedAndCorrects()
    {
        var sample = new TareSample("WB-25", Ten, [195, 197, 196, 198, 194]);
        Assert.Equal((196, -16), (sample.Mean, sample.Correction(180)));
        Assert.Equal(2.776 * 1.5811 / Math.Sqrt(5), sample.PlusMinus, 1e-3); // t(0.975; 4) of the usual printed tables
        Assert.True(sample.Contradicts(180));
        Assert.False(sample.Contradicts(197));
        Assert.Empty(sample.Faults(25_000));
        Assert.Contains("were full ones weighed", Assert.Single((sample with { Grams = [25_180, 25_181, 25_182, 25_183, 25_184] }).Faults(25_000)), StringComparison.Ordinal);
        Assert.Contains("Weigh 5 to 200", Assert.Single((sample with { Grams = [195, 196] }).Faults(25_000)), StringComparison.Ordinal);
    }

    [Fact]
    public void Inspection_SignedAndRead_FindsWhatItsWeightsSay()
    {
        double[] errors = [-.02, .01, -.03, -.01, .02, -.04, 0, -.02, .01, -.01, -.03, 0];
        var label = NetLabel.OfPounds(5).Grams;
        // LS: worked case of docs/model/net-content.md, twelve bags of 5 lb; here with an empty bag of 20 g on each.
        var inspection = new ContentInspection(NetRules.US, "AP-5LB", label, 200, [.. errors.Select(e => label + (e * 453.59237) + 20)], 20, "Ada", Ten, "Ben") { IsInPounds = true };
        Assert.Empty(inspection.Faults());
        Assert.True(ContentInspection.TryRead(inspection.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.True(read.American()!.Passes);
        Assert.Equal(0.0118024, read.American()!.ErrorLimit / 453.59237, 6);
        Assert.False((inspection with { Gross = [.. inspection.Gross.Select(g => g - (0.010 * 453.59237))] }).American()!.Passes);

        Assert.Contains("Of 200 packages 12 are weighed; got 11", Assert.Single((inspection with { Gross = [.. inspection.Gross.Skip(1)] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("above that of the empty package", Assert.Single((inspection with { TareGrams = 2300 }).Faults()), StringComparison.Ordinal);
        Assert.Contains("is the unit right?", Assert.Single((inspection with { Gross = [.. inspection.Gross.Select(g => g / 1000)], TareGrams = 0 }).Questions()), StringComparison.Ordinal);
        Assert.Equal(20, ContentInspection.SizeOf(NetRules.EU, 900, spoils: true));
        Assert.Equal(50, ContentInspection.SizeOf(NetRules.EU, 900));
    }

    [Fact]
    public void Giveaway_OfADay_IsMassAndMoney()
    {
        var giveaway = new Giveaway(30, 4000, 700m);
        Assert.Equal(120, giveaway.KilogramsADay);
        Assert.Equal(84.00m, giveaway.MoneyADay);
        Assert.Null((giveaway with { PricePerTonne = null }).MoneyADay);
    }

    private static WeighedHour Hour(params (int Second, int Gross)[] packages) => new("L1", "WB-2", Ten, [.. packages.Select(p => new WeighedPackage(Ten + Duration.FromSeconds(p.Second), p.Gross, 180, false))]);
}
