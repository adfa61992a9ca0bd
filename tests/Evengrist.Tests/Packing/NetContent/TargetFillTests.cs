using Evengrist.Packing.NetContent;
using MathNet.Numerics.Distributions;

namespace Evengrist.Tests.Packing.NetContent;

public sealed class TargetFillTests
{
    /// <summary>Practice of packers [from memory], computed: T1 + 1.960 s, T2 + 3.719 s, or the label.</summary>
    [Theory]
    [InlineData(1000, 4, 1000)]
    [InlineData(1000, 8, 1000.68)]
    [InlineData(1000, 10, 1007.19)]
    [InlineData(25_000, 60, 25_000)]
    [InlineData(25_000, 130, 25_004.80)]
    public void InEurope_Spread_IsTheLargestOfThree(double label, double deviation, double expected)
    {
        var fill = TargetFill.InEurope(NetLabel.OfGrams(label), deviation);
        Assert.Equal(expected, fill.Grams, 2);
        Assert.Equal(expected - label, fill.Giveaway(NetLabel.OfGrams(label)), 2);
    }

    /// <summary>The two rules behind the factors hold at the fill: at most 2.5 % below T1, at most 1 in 10,000 below T2.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    public void InEurope_AtTheFill_FewAreBelowT1AndT2(double deviation)
    {
        var label = NetLabel.OfGrams(1000);
        var fill = TargetFill.InEurope(label, deviation).Grams;
        Assert.InRange(Normal.CDF(fill, deviation, TolerableError.First(label)), 0, 0.02501);
        Assert.InRange(Normal.CDF(fill, deviation, TolerableError.Second(label)), 0, 0.000101);
    }

    [Theory]
    [InlineData(200)]
    [InlineData(1000)]
    [InlineData(5000)]
    public void InAmerica_AtTheFill_TheAverageTestPassesWithNinetyNinePerCentAndFewAreShort(int lot)
    {
        var (label, deviation) = (NetLabel.OfPounds(50), 0.25 * 453.59237);
        var fill = TargetFill.InAmerica(label, deviation, lot);
        var plan = PackagePlan.For(lot);
        Assert.Equal(0.99, plan.Chance((fill.ByAverage - label.Grams) / deviation), 6);
        Assert.Equal(0.001 / plan.Size, Normal.CDF(fill.ByEach, deviation, label.Grams - AllowedVariation.Grams(label)), 8);
        Assert.Equal(Math.Max(fill.ByAverage, fill.ByEach), fill.Grams);
    }

    /// <summary>50 lb bags, mean 50.0, s 0.25: below 49.5 lb 0.0227501, twelve clean 0.758695; mean 50.10, s 0.12: 2.87e-7 [computed].</summary>
    [Fact]
    public void Short_OfFiftyPoundBags_IsTheNormalTail()
    {
        var allowed = AllowedVariation.Grams(NetLabel.OfPounds(50)) / 453.59237;
        Assert.Equal(0.0227501, Normal.CDF(50, 0.25, 50 - allowed), 7);
        Assert.Equal(0.758695, Math.Pow(1 - Normal.CDF(50, 0.25, 50 - allowed), 12), 6);
        Assert.Equal(2.87e-7, Normal.CDF(50.10, 0.12, 50 - allowed), 9);
    }

    [Fact]
    public void Spread_OfNet_IsWithoutThatOfThePackage()
    {
        Assert.Equal(4, new FillSpread(5, 3).Net, 12);
        Assert.NotNull(new FillSpread(3, 3).Fault);
        Assert.NotNull(new FillSpread(0).Fault);
        Assert.Null(new FillSpread(5, 3).Fault);
    }

    [Fact]
    public void DryingOut_FlourThatLosesWater_IsPackedHeavierAndItsDryMatterStays()
    {
        var packed = new DryingOut(14, 12).ToPack(1000);
        Assert.Equal(1000 * 0.88, packed * 0.86, 9);
        Assert.True(packed > 1000);
        Assert.NotNull(new DryingOut(100, 12).Fault);
    }
}
