using Evengrist.Packing.NetContent;

namespace Evengrist.Tests.Packing.NetContent;

/// <summary>NIST Handbook 133. Rows from memory; the factors, the operating points and the worked case recomputed.</summary>
public sealed class PackageCheckTests
{
    private static readonly double[] Errors = [-0.02, 0.01, -0.03, -0.01, 0.02, -0.04, 0, -0.02, 0.01, -0.01, -0.03, 0];

    /// <summary>The printed factor is t(0.975; n − 1)/√n, rounded [computed].</summary>
    [Theory]
    [InlineData(2, 2, 8.9846)]
    [InlineData(3, 3, 2.4841)]
    [InlineData(4, 4, 1.5912)]
    [InlineData(5, 5, 1.2417)]
    [InlineData(6, 6, 1.0494)]
    [InlineData(7, 7, 0.9248)]
    [InlineData(8, 8, 0.8360)]
    [InlineData(9, 9, 0.7687)]
    [InlineData(10, 10, 0.7154)]
    [InlineData(11, 11, 0.6718)]
    [InlineData(12, 12, 0.6354)]
    [InlineData(250, 12, 0.6354)]
    [InlineData(251, 24, 0.4223)]
    [InlineData(3200, 24, 0.4223)]
    [InlineData(3201, 48, 0.2904)]
    public void Plan_Lot_TakesThePrintedSampleAndItsFactorFollowsFromT(int lot, int size, double unrounded)
    {
        var plan = PackagePlan.For(lot);
        Assert.Equal(size, plan.Size);
        Assert.Equal(unrounded, PackagePlan.Unrounded(size), 4);
        Assert.InRange(plan.Factor, unrounded - 0.0011, unrounded + 0.0011);
        Assert.Equal(lot > 3200 ? 1 : 0, plan.Allowed);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0)]
    [InlineData(-5)]
    public void Plan_LotTooSmall_IsRefused(int lot) => Assert.Throws<ArgumentOutOfRangeException>(() => PackagePlan.For(lot));

    /// <summary>Chance to pass when the true mean lies 0, 0.1, 0.2, 0.5 and 1 standard deviations below the label [computed by the non-central t].</summary>
    [Theory]
    [InlineData(12, new[] { 0.975, 0.949755, 0.907508, 0.647364, 0.117108 })]
    [InlineData(24, new[] { 0.975, 0.931908, 0.846282, 0.349616, 0.003206 })]
    [InlineData(48, new[] { 0.975, 0.899938, 0.726602, 0.075997, 7.1e-7 })]
    public void Chance_TrueMeanBelowLabel_IsTheNoncentralT(int size, double[] expected)
    {
        var plan = new PackagePlan(size, 0, 0);
        double[] below = [0, 0.1, 0.2, 0.5, 1];
        Assert.All(below.Zip(expected), pair => Assert.Equal(pair.Second, plan.Chance(-pair.First), 6));
    }

    /// <summary>Twelve bags of 5 lb [ours]: mean −0.010 lb, s 0.0185864 lb, limit 0.0118024 lb: passes; all lower by 0.010 lb: fails.</summary>
    [Fact]
    public void Check_TwelveBags_PassUntilAllAreAHundredthLighter()
    {
        const double lb = 453.59237;
        var label = NetLabel.OfPounds(5);
        var found = PackageCheck.Of(label, 200, [.. Errors.Select(e => (5 + e) * lb)]);
        Assert.Equal(-0.010, found.MeanError / lb, 9);
        Assert.Equal(0.0185864, found.Deviation / lb, 7);
        Assert.Equal(0.0118024, found.ErrorLimit / lb, 7);
        Assert.Equal(0.14, found.Variation / lb, 9);
        Assert.True(found.Passes);

        var lighter = PackageCheck.Of(label, 200, [.. Errors.Select(e => (5 + e - 0.010) * lb)]);
        Assert.Equal(AverageVerdict.Grey, lighter.Average); // Short, by less than 3 % of the label: drying is looked into first.
        Assert.False(lighter.Passes);
        var far = PackageCheck.Of(label, 200, [.. Errors.Select(e => (4.8 + e) * lb)]);
        Assert.Equal(AverageVerdict.Fails, far.Average);
        Assert.Equal(12, far.Short);
    }

    [Fact]
    public void Check_OneBagShortByMoreThanAllowed_FailsALotOfTwelveAndPassesOneOfFortyEight()
    {
        var label = NetLabel.OfPounds(5);
        double[] weights = [.. Enumerable.Repeat(label.Grams + 20, 11), label.Grams - 70];
        Assert.Equal(1, PackageCheck.Of(label, 100, weights).Short);
        Assert.False(PackageCheck.Of(label, 100, weights).Passes);
        Assert.True(PackageCheck.Of(label, 4000, [.. weights, .. Enumerable.Repeat(label.Grams + 20, 36)]).Passes);
    }

    [Fact]
    public void Check_AnotherNumberOfWeights_SaysHowMany()
    {
        var refused = Assert.Throws<ArgumentException>(() => PackageCheck.Of(NetLabel.OfPounds(5), 300, new double[12]));
        Assert.Contains("24 are weighed; got 12", refused.Message, StringComparison.Ordinal);
    }

    /// <summary>Handbook 133, table 2-5 [8 oz and 3 oz and 113 g confirmed by public letters, the rest from memory].</summary>
    [Theory]
    [InlineData(0.5, 0.028)]
    [InlineData(0.1875, 0.016)]
    [InlineData(0.05, 0.005)]
    [InlineData(5, 0.14)]
    [InlineData(10, 0.22)]
    [InlineData(25, 0.37)]
    [InlineData(50, 0.50)]
    [InlineData(54.40, 0.50)]
    [InlineData(100, 2.0)]
    public void Variation_LabelInPounds_IsTheRow(double pounds, double allowed) => Assert.Equal(allowed, AllowedVariation.Grams(NetLabel.OfPounds(pounds)) / 453.59237, 9);

    [Theory]
    [InlineData(113, 7.2)]
    [InlineData(454, 19.9)]
    [InlineData(1000, 35.3)]
    [InlineData(10_000, 140)]
    [InlineData(25_000, 500)]
    public void Variation_LabelInGrams_IsTheRow(double grams, double allowed) => Assert.Equal(allowed, AllowedVariation.Grams(NetLabel.OfGrams(grams)), 9);

    [Fact]
    public void Variation_HeavierLabel_IsNeverLess()
    {
        double[] labels = [.. Enumerable.Range(1, 4000).Select(i => i * 10.0)];
        Assert.All(labels.Zip(labels.Skip(1)), pair => Assert.True(AllowedVariation.Grams(NetLabel.OfGrams(pair.First)) <= AllowedVariation.Grams(NetLabel.OfGrams(pair.Second)) + 1e-9));
    }
}
