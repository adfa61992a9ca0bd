using Evengrist.Packing.NetContent;

namespace Evengrist.Tests.Packing.NetContent;

/// <summary>Directive 76/211/EEC, Annexes I and II, and UK SI 2006/659, schedule 2 [read at legislation.gov.uk]; operating points computed.</summary>
public sealed class BatchCheckTests
{
    private static readonly double[] Shares = [0.01, 0.02, 0.025, 0.05, 0.09, 0.10];

    [Theory]
    [InlineData(500, new[] { 0.996573, 0.976136, 0.956471, 0.763601, 0.356262, 0.277342 })]
    [InlineData(3200, new[] { 0.999815, 0.994572, 0.984862, 0.781227, 0.248308, 0.166623 })]
    [InlineData(3201, new[] { 0.999957, 0.995416, 0.982925, 0.647523, 0.085263, 0.044399 })]
    public void Chance_CountOfABatch_IsTheDoublePlans(int batch, double[] expected) => Assert.All(Shares.Zip(expected), p => Assert.Equal(p.Second, BatchPlan.For(batch).Chance(p.First), 6));

    [Theory]
    [InlineData(0.01, 0.983141)]
    [InlineData(0.02, 0.940101)]
    [InlineData(0.025, 0.911758)]
    [InlineData(0.05, 0.735840)]
    [InlineData(0.10, 0.391747)]
    public void Chance_CountWhereTestingSpoils_IsOfTwenty(double share, double expected) => Assert.Equal(expected, BatchPlan.Destructive.Chance(share), 6);

    /// <summary>Chance that the mean accepts at 0, 0.1, 0.2, 0.5 and 1 standard deviations below the label [computed].</summary>
    [Theory]
    [InlineData(20, new[] { 0.995, 0.984832, 0.960476, 0.702656, 0.067505 })]
    [InlineData(30, new[] { 0.995, 0.980226, 0.938407, 0.497445, 0.004982 })]
    [InlineData(50, new[] { 0.995, 0.970771, 0.886659, 0.200663, 1.08e-5 })]
    public void ChanceOfMean_BelowLabel_IsTheNoncentralT(int size, double[] expected)
    {
        var plan = new BatchPlan(size, 1, 2, 0, 1, 0);
        double[] below = [0, 0.1, 0.2, 0.5, 1];
        Assert.All(below.Zip(expected), p => Assert.Equal(p.Second, plan.ChanceOfMean(-p.First), 6));
    }

    /// <summary>The factors of the law are t(0.995; n − 1)/√n, rounded.</summary>
    [Theory]
    [InlineData(100, 0.5032449)]
    [InlineData(501, 0.3790024)]
    public void Factor_OfTheLaw_FollowsFromT(int batch, double unrounded)
    {
        var plan = BatchPlan.For(batch);
        Assert.Equal(unrounded, BatchPlan.MeanFactor(plan.First), 7);
        Assert.Equal(plan.Factor, Math.Round(unrounded, 3));
        Assert.Equal(0.6397244, BatchPlan.MeanFactor(20), 7);
    }

    /// <summary>Annex I [5 to 1000 g read; above from memory]; per cents rounded up to 0.1 g [from memory].</summary>
    [Theory]
    [InlineData(50, 4.5)]
    [InlineData(75, 4.5)]
    [InlineData(123, 5.6)]
    [InlineData(250, 9)]
    [InlineData(500, 15)]
    [InlineData(1000, 15)]
    [InlineData(2268, 34.1)]
    [InlineData(10_000, 150)]
    [InlineData(12_500, 150)]
    [InlineData(25_000, 250)]
    public void Error_OfALabel_IsTheRow(double grams, double error) => Assert.Equal(error, TolerableError.Grams(NetLabel.OfGrams(grams)), 9);

    [Fact]
    public void Error_BelowTheTable_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => TolerableError.Grams(NetLabel.OfGrams(4)));

    [Theory]
    [InlineData(1, null, CountVerdict.Accepted)]
    [InlineData(2, null, CountVerdict.SecondSample)]
    [InlineData(3, null, CountVerdict.Rejected)]
    [InlineData(2, 2, CountVerdict.Accepted)]
    [InlineData(2, 3, CountVerdict.Rejected)]
    public void Check_Inadequate_IsAcceptedRejectedOrWeighedAgain(int first, int? second, CountVerdict expected)
    {
        var label = NetLabel.OfGrams(1000);
        var found = BatchCheck.Of(label, 400, Sample(30, first), second is { } more ? Sample(30, more) : []);
        Assert.Equal(expected, found.Count);
        Assert.Equal(first + (second ?? 0), found.Inadequate);
        Assert.True(found.MayBearMark);
        Assert.Equal(expected == CountVerdict.Accepted, found.Passes);
    }

    [Fact]
    public void Check_OneBelowTwiceTheError_MayNotBearTheMark()
    {
        var found = BatchCheck.Of(NetLabel.OfGrams(1000), 400, [.. Sample(29, 0), 969], []);
        Assert.False(found.MayBearMark);
        Assert.False(found.Passes);
    }

    [Fact]
    public void Check_SmallBatch_IsWeighedWholeAndItsMeanMayNotBeBelow()
    {
        var found = BatchCheck.Of(NetLabel.OfGrams(1000), 40, Sample(40, 1), []);
        Assert.Null(found.Plan);
        Assert.Equal(1000, found.LeastMean);
        Assert.Equal(CountVerdict.Accepted, found.Count);
        Assert.Throws<ArgumentException>(() => BatchCheck.Of(NetLabel.OfGrams(1000), 40, Sample(39, 0), []));
    }

    private static double[] Sample(int size, int inadequate) => [.. Enumerable.Range(0, size).Select(i => i < inadequate ? 984 : 1004.0 + (i % 2))];
}
