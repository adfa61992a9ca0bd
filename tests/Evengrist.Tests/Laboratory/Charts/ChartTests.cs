using Evengrist.Laboratory.Charts;

namespace Evengrist.Tests.Laboratory.Charts;

/// <summary>Control charts against worked examples of the NIST/SEMATECH e-Handbook (from memory, recomputed with R 4.2.2) and printed factors.</summary>
public sealed class ChartTests
{
    // Printed tables of factors agree with these (from memory); recomputed in R from the distribution of the range.
    [Theory]
    [InlineData(2, 1.880, 2.659, 0, 3.267, 0.7979, 1.128, 0.853, 0, 3.267, 2.659)]
    [InlineData(3, 1.023, 1.954, 0, 2.568, 0.8862, 1.693, 0.888, 0, 2.575, 1.772)]
    [InlineData(5, 0.577, 1.427, 0, 2.089, 0.9400, 2.326, 0.864, 0, 2.114, 1.290)]
    [InlineData(7, 0.419, 1.182, 0.118, 1.882, 0.9594, 2.704, 0.833, 0.076, 1.924, 1.109)]
    [InlineData(10, 0.308, 0.975, 0.284, 1.716, 0.9727, 3.078, 0.797, 0.223, 1.777, 0.975)]
    [InlineData(15, 0.223, 0.789, 0.428, 1.572, 0.9823, 3.472, 0.756, 0.347, 1.653, 0.864)]
    [InlineData(25, 0.153, 0.606, 0.565, 1.435, 0.9896, 3.931, 0.708, 0.459, 1.541, 0.763)]
    public void Constants_AreThePrintedOnes(int n, double a2, double a3, double b3, double b4, double c4, double d2, double d3, double lowerD, double upperD, double e2)
    {
        var found = ChartConstants.Of(n);
        Assert.Equal((a2, a3, b3, b4), (R(found.A2), R(found.A3), R(found.B.Lower), R(found.B.Upper)));
        Assert.Equal((c4, d2, d3, lowerD, upperD, e2), (Math.Round(found.C4, 4), R(found.D2), R(found.D3), R(found.D.Lower), R(found.D.Upper), R(found.E2)));
    }

    // d₂ of two is 2/√π and d₃ √(2 − 4/π): known exactly.
    [Fact]
    public void Constants_OfTwo_AreExact()
    {
        Assert.Equal(2 / Math.Sqrt(Math.PI), ChartConstants.Of(2).D2, 1e-10);
        Assert.Equal(Math.Sqrt(2 - (4 / Math.PI)), ChartConstants.Of(2).D3, 1e-6);
        Assert.Throws<ArgumentOutOfRangeException>(() => ChartConstants.Of(1));
    }

    // NIST/SEMATECH e-Handbook 6.3.2.2, from memory; limits with the exact d₂.
    [Fact]
    public void Individuals_OfTheHandbook_HaveItsLimits()
    {
        var chart = IndividualsChart.Of([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
        Assert.Equal((50.81, 1.8777778, 45.817588, 55.802412), (Math.Round(chart.Values.Centre, 6), Math.Round(chart.Ranges.Centre, 7), Math.Round(chart.Values.Lower, 6), Math.Round(chart.Values.Upper, 6)));
        Assert.Equal(6.1347, chart.Ranges.Upper, 0.0011); // With the printed 3.267; 3.2665 before rounding.
        Assert.Throws<ArgumentException>(() => IndividualsChart.Of([1]));
        Assert.Throws<ArgumentException>(() => IndividualsChart.Of([1, double.NaN]));
    }

    // NIST/SEMATECH e-Handbook 6.3.2.3, from memory; sums by hand.
    [Fact]
    public void Cusum_OfTheHandbook_SignalsAtTheFourteenth()
    {
        double[] values = [324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600, 324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350];
        var chart = new CusumChart(325, 0.3175, 4.1959);
        var sums = chart.Of(values);
        Assert.Equal([3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025, 19.035], sums.Skip(12).Select(s => Math.Round(s.Above, 4)));
        Assert.Equal([0, 0.0075, 0, 0.3325, 0, 0, 0.5575, 0.715, 0.1725, 0.255, 0.3125], sums.Take(11).Select(s => Math.Round(s.Below, 4)));
        Assert.Equal(13, chart.Signals(values)[0]);
        Assert.Throws<InvalidOperationException>(() => new CusumChart(0, -1, 5).Of(values));
    }

    // R, package spc 0.6.7; the columns of sums equal the published table for k = 0.5 (from memory).
    [Theory]
    [InlineData(4, 0, 167.684)]
    [InlineData(4, 0.25, 74.224)]
    [InlineData(4, 1, 8.383)]
    [InlineData(4, 4, 1.708)]
    [InlineData(5, 0, 465.444)]
    [InlineData(5, 0.5, 37.996)]
    [InlineData(5, 2, 4.009)]
    public void RunLength_OfSums_IsThePublishedOne(double h, double shift, double length) => Assert.Equal(length, RunLength.OfCusum(shift, 0.5, h), 6e-4);

    // R, package spc 0.6.7, limits constant in time.
    [Theory]
    [InlineData(0.1, 2.814, 0, 499.580)]
    [InlineData(0.1, 2.814, 1, 10.331)]
    [InlineData(0.2, 2.962, 0, 499.735)]
    [InlineData(0.2, 2.962, 2, 3.743)]
    [InlineData(0.3, 3, 0.5, 53.160)]
    public void RunLength_OfMovingMeans_IsThatOfR(double weight, double width, double shift, double length) => Assert.Equal(length, RunLength.OfEwma(shift, weight, width), 6e-4);

    [Fact]
    public void RunLength_OfSingleValuesAndOneSide_IsTheKnownOne()
    {
        Assert.Equal([370.398, 43.895, 6.303, 2.000], new[] { 0.0, 1, 2, 3 }.Select(s => R(RunLength.OfIndividuals(s))));
        Assert.Equal([930.887, 38.010, 10.376], new[] { 0, 0.5, 1 }.Select(s => R(RunLength.OfCusumAbove(s, 0.5, 5))));
    }

    // A moving mean of weight 1 is the value itself, with limits of single values.
    [Fact]
    public void Ewma_OfWeightOne_IsTheChartOfSingleValues()
    {
        var chart = new EwmaChart(10, 2, 1);
        Assert.Equal([4.0, 17.5], chart.Of([4, 17.5]));
        Assert.Equal((4.0, 16.0, chart.Steady), (chart.At(1).Lower, chart.At(9).Upper, chart.At(1)));
        Assert.Equal([1], chart.Signals([4, 17.5]));
        Assert.Equal(RunLength.OfIndividuals(1, 3), RunLength.OfEwma(1, 1, 3), 1e-6);
        Assert.Throws<InvalidOperationException>(() => new EwmaChart(0, 0).Steady);
    }

    // By hand: λ 0.5 from 0: 1, 1.5, then back; limits 3·√(⅓·¾) and 3·√⅓.
    [Fact]
    public void Ewma_ByHand_WidensToItsSteadyLimits()
    {
        var chart = new EwmaChart(0, 1, 0.5);
        Assert.Equal([1, 1.5, 0.75], chart.Of([2, 2, 0]));
        Assert.Equal((1.5, 1.7320508), (Math.Round(chart.At(1).Upper, 7), Math.Round(chart.Steady.Upper, 7)));
    }

    // Limits of the e-Handbook's wafers (mean count 16: 4 and 28) and of shares of 50 with mean 0.2313333.
    [Fact]
    public void Counts_HaveTheHandbooksLimits()
    {
        Assert.Equal((4.0, 28.0), (CountLimits.Count(16).Lower, CountLimits.Count(16).Upper));
        Assert.False(CountLimits.Count(16).IsBeyond(28));
        Assert.True(CountLimits.Count(16).IsBeyond(31));
        var share = CountLimits.Share(0.23133333333, 50);
        Assert.Equal(0.05242755, share.Lower, 2e-8);
        Assert.Equal(0.41023911, share.Upper, 2e-8);
        Assert.Equal((2.0, 6.0, 0.0, 10.0), (CountLimits.Rate(4, 9).Lower, CountLimits.Rate(4, 9).Upper, CountLimits.Rate(4, 1).Lower, CountLimits.Rate(4, 1).Upper));
        Assert.Throws<ArgumentException>(() => CountLimits.Share(1.2, 50));
    }

    // Input ours; answers by the wording of the rules. Places counted from 1.
    [Theory]
    [InlineData(RunRule.BeyondThree, "17")]
    [InlineData(RunRule.TwoOfThreeBeyondTwo, "8")]
    [InlineData(RunRule.FourOfFiveBeyondOne, "15")]
    [InlineData(RunRule.EightOnOneSide, "17 25 26 27")]
    [InlineData(RunRule.NineOnOneSide, "26 27")]
    [InlineData(RunRule.FifteenWithinOne, "")]
    public void Rules_FireAtTheLastOfTheirPattern(RunRule rule, string places)
    {
        double[] z = [0.2, -0.4, 1.1, 0.8, -1.3, 2.2, 0.1, 2.3, -0.6, 0.4, 1.2, 1.4, 0.3, 1.6, 1.1, 0.9, 3.2, -0.2, -0.5, -0.9, -1.1, -0.3, -0.7, -0.1, -0.6, -0.2, -0.4, 0.3, -0.2, 0.5];
        Assert.Equal(places, string.Join(' ', RunRules.Fires(z, rule).Select(i => i + 1)));
    }

    [Fact]
    public void Rules_OfDirectionTurnsAndTwoSides_FireWhereTheyShould()
    {
        Assert.Equal([5], RunRules.Fires([0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.5], RunRule.SixInOneDirection));
        Assert.Equal([13], RunRules.Fires([.. Enumerable.Range(0, 14).Select(i => i % 2 == 0 ? 0.5 : -0.5)], RunRule.FourteenByTurns));
        Assert.Equal([7], RunRules.Fires([1.5, -1.5, 1.2, 1.2, -1.1, 2, 2, 1.3, 0], RunRule.EightBeyondOne));
        Assert.Empty(RunRules.Fires([.. Enumerable.Repeat(1.5, 9)], RunRule.EightBeyondOne));
        Assert.Equal([14], RunRules.Fires([.. Enumerable.Repeat(0.5, 15)], RunRule.FifteenWithinOne));
        Assert.Throws<ArgumentOutOfRangeException>(() => RunRules.Fires([1], RunRule.None));
        Assert.Equal((4, 8), (RunRules.Four.Count, RunRules.Eight.Count));
    }

    // NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, s 2, target 14 (from memory); confidence limits recomputed with R.
    [Fact]
    public void Capability_OfTheHandbook_IsOneAndTwoThirds()
    {
        var found = Capability.Of(16, 2, 50, 8, 20, 14);
        Assert.Equal((1.0, 0.666667, 0.7071068), (found.Cp, Math.Round(found.Cpk, 6), Math.Round(found.Cpm!.Value, 7)));
        Assert.Equal((22750.1, 31.7), (Math.Round(1e6 * found.ShareAbove, 1), Math.Round(1e6 * found.ShareBelow, 1)));
        var better = Capability.Of(14, 2 / 1.2, 50, 8, 20); // Cp and Cpk 1.2.
        Assert.Equal((0.962979, 1.436551), (Math.Round(better.CpBounds!.Value.Lower, 6), Math.Round(better.CpBounds.Value.Upper, 6)));
        var one = Capability.Of(14, 2, 50, null, 20); // Cpk 1, one-sided.
        Assert.Equal(0.781512, one.CpkBounds.Lower, 5e-6); // With 1.96 for 1.959964.
        Assert.Equal(1.218488, one.CpkBounds.Upper, 5e-6);
        Assert.Equal((null, null, 0.0), (one.Cp, one.CpBounds, one.ShareBelow));
        Assert.Throws<ArgumentException>(() => Capability.Of(14, 2, 50, null, null));
        Assert.Throws<ArgumentException>(() => Capability.Of(14, 0, 50, 8, 20));
    }

    // By hand: groups 1 2 3 and 3 4 8: means 2 and 5, ranges 2 and 5, deviations 1 and √7.
    [Fact]
    public void Groups_ByHand_HaveLimitsFromEitherSpread()
    {
        IReadOnlyList<IReadOnlyList<double>> groups = [[1, 2, 3], [3, 4, 8]];
        var (ranges, deviations) = (SubgroupChart.Of(groups, SigmaEstimate.GroupRange), SubgroupChart.Of(groups, SigmaEstimate.GroupDeviation));
        Assert.Equal((3.5, 3.5, 3.5 / ChartConstants.Of(3).D2), (ranges.Means.Centre, ranges.Spreads.Centre, ranges.Sigma));
        Assert.Equal(3.5 + (1.0233 * 3.5), ranges.Means.Upper, 1e-3);
        Assert.Equal((1 + Math.Sqrt(7)) / 2 / 0.8862, deviations.Sigma, 1e-3);
        Assert.Throws<ArgumentException>(() => SubgroupChart.Of([[1, 2], [1, 2, 3]], SigmaEstimate.GroupRange));
        Assert.Throws<ArgumentException>(() => SubgroupChart.Of(groups, SigmaEstimate.Overall));
    }

    private static double R(double value) => Math.Round(value, 3);
}
