using CsCheck;
using Evengrist.Intake.Sampling;

namespace Evengrist.Tests.Intake.Sampling;

public sealed class VarianceTests
{
    // J. AOAC Int. 83(5):1285-1292 (2000), abstract: CVs at 5 ppm of sampling, preparation, analysis and in all 6.3, 10.0, 6.3, 13.4 %.
    [Fact]
    public void Don_AtFive_HasTheCoefficientsOfVariationOfTheAbstract()
    {
        var parts = DonVariance.Of(5, DonSizes.Base);
        Assert.Equal([6.3, 10.0, 6.3, 13.4], new[] { parts.Sample, parts.Preparation, parts.Determination, parts.Total }.Select(v => Math.Round(100 * Math.Sqrt(v) / 5, 1)));
    }

    // Reckoned from the same coefficients (derived); only the row at 5 ppm is confirmed by the abstract.
    [Theory]
    [InlineData(5, 0.454, 25, 1, 0.4509, 0.6715, 13.4)]
    [InlineData(2, 0.454, 25, 1, 0.2102, 0.4585, 22.9)]
    [InlineData(1, 0.454, 25, 1, 0.1180, 0.3435, 34.4)]
    [InlineData(1, 1.0, 50, 2, 0.0578, 0.2404, 24.0)]
    [InlineData(1, 2.0, 50, 2, 0.0519, 0.2278, 22.8)]
    public void Don_WorkedTable_IsReproduced(double ppm, double kilograms, double grams, int n, double variance, double sd, double cv)
    {
        var parts = DonVariance.Of(ppm, new DonSizes(kilograms, grams, n));
        Assert.Equal(variance, parts.Total, 4);
        Assert.Equal(sd, parts.StandardDeviation, 4);
        Assert.Equal(cv, 100 * parts.StandardDeviation / ppm, 0.051);
    }

    // Derived: normal error at base sizes.
    [Theory]
    [InlineData(1.00, 0.6, 0.925)]
    [InlineData(1.00, 0.8, 0.739)]
    [InlineData(1.00, 0.9, 0.620)]
    [InlineData(1.00, 1.0, 0.500)]
    [InlineData(1.00, 1.1, 0.390)]
    [InlineData(1.00, 1.2, 0.295)]
    [InlineData(1.00, 1.5, 0.109)]
    [InlineData(0.75, 0.6, 0.705)]
    [InlineData(0.75, 0.8, 0.437)]
    [InlineData(0.75, 0.9, 0.324)]
    [InlineData(0.75, 1.0, 0.233)]
    [InlineData(0.75, 1.1, 0.164)]
    [InlineData(0.75, 1.2, 0.112)]
    [InlineData(0.75, 1.5, 0.033)]
    public void Accepted_WorkedTable_IsReproduced(double level, double truth, double chance) =>
        Assert.Equal(chance, AcceptanceModel.Accepted(new AcceptanceSpec(1, level, DonSizes.Base), truth), 0.00051);

    [Fact]
    public void Guarded_Level_KeepsTheBuyersRiskAtTheLimit()
    {
        var spec = new AcceptanceSpec(1, 1, new DonSizes(2, 50, 2)) { BuyersRisk = 0.05 };
        var level = AcceptanceModel.GuardedLevel(spec)!.Value;
        Assert.Equal(0.05, AcceptanceModel.BuyersRisk(spec with { AcceptAtMilligrams = level }, 1), 9);
        Assert.Equal(1 - 1.6448536 * 0.2278, level, 3);
        Assert.True(AcceptanceModel.SellersRisk(spec with { AcceptAtMilligrams = level }, 0.6) > AcceptanceModel.SellersRisk(spec, 0.6));
        Assert.Null(AcceptanceModel.GuardedLevel(new AcceptanceSpec(0.1, 0.1, DonSizes.Base)));
        Assert.Throws<ArgumentOutOfRangeException>(() => AcceptanceModel.GuardedLevel(spec with { BuyersRisk = 0.6 }));
    }

    // By definition: 9/9 + 16/4 + 25/1 + 4/4 + 1 = 1 + 4 + 25 + 1 + 1.
    [Fact]
    public void Of_Parts_AddUpByTheEquation()
    {
        var parts = VarianceModel.Of(new VarianceSpec(3, 4, 5, 2, 1), new SampleSizes(9, 4, 1, 4));
        Assert.Equal(new VarianceParts(1, 4, 25, 1, 1), parts);
        Assert.Equal(32, parts.Total);
        Assert.Equal(Math.Sqrt(31), parts.BesideProbes, 12);
    }

    [Fact]
    public void Of_Law_MoreRepeatsNeverMakeItWorseAndNeverBeatTheInstrument() => Gen.Select(Gen.Double[0, 2], Gen.Double[0, 2], Gen.Double[0, 2], Gen.Int[1, 50], Gen.Int[1, 50])
        .Sample((between, test, instrument, n, more) =>
        {
            var spec = new VarianceSpec(between, test, Instrument: instrument);
            var (few, many) = (VarianceModel.Of(spec, new SampleSizes(n, n)), VarianceModel.Of(spec, new SampleSizes(n + more, n + more)));
            Assert.True(many.Total <= few.Total + 1e-12 && many.Total >= instrument * instrument - 1e-12);
        });

    // n = (z s_b/E)²: 1.959964 · 0.5/0.25 squared is 15.37 (derived).
    [Theory]
    [InlineData(0.5, 0.25, 0.95, 16)]
    [InlineData(0.5, 0.5, 0.95, 4)]
    [InlineData(0.0, 0.5, 0.95, 1)]
    [InlineData(0.5, 0.25, 0.90, 11)] // 1.644854 · 2 squared is 10.82
    public void RequiredProbes_Worked_RoundsUp(double between, double halfWidth, double confidence, int expected) =>
        Assert.Equal(expected, VarianceModel.RequiredProbes(between, halfWidth, confidence));

    [Fact]
    public void RequiredProbes_Law_KeepTheErrorWithinAndOneLessWouldNot() => Gen.Select(Gen.Double[0.01, 2], Gen.Double[0.05, 1]).Sample((between, halfWidth) =>
    {
        var n = VarianceModel.RequiredProbes(between, halfWidth);
        const double Z = 1.959963984540054;
        Assert.True(Z * between / Math.Sqrt(n) <= halfWidth * (1 + 1e-9));
        Assert.True(n == 1 || Z * between / Math.Sqrt(n - 1) > halfWidth * (1 - 1e-9));
    });

    [Fact]
    public void Spec_WhatCannotBe_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => VarianceModel.Of(new VarianceSpec(-1), new SampleSizes()));
        Assert.Throws<ArgumentException>(() => VarianceModel.Of(new VarianceSpec(1), new SampleSizes(0)));
        Assert.Throws<ArgumentException>(() => VarianceModel.Of(new VarianceSpec(double.NaN), new SampleSizes()));
        Assert.Throws<ArgumentException>(() => DonVariance.Of(-0.1, DonSizes.Base));
        Assert.Throws<ArgumentException>(() => DonVariance.Of(1, new DonSizes(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => VarianceModel.RequiredProbes(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => VarianceModel.RequiredProbes(1, 1, 1));
    }
}
