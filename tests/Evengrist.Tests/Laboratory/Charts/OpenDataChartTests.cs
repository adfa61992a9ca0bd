using System.Globalization;
using Evengrist.Laboratory.Charts;

namespace Evengrist.Tests.Laboratory.Charts;

/// <summary>Control charts of open data: R package qcc (piston rings, boiler; GPL) and NIST Dataplot (public domain); answers by R 4.2.2, the data's own remarks named beside.</summary>
public sealed class OpenDataChartTests
{
    private static readonly string[] Boiler = ["t1", "t2", "t3", "t4", "t5", "t6", "t7", "t8"];

    [OpenDataFact]
    public void PistonRings_MeansAndRanges_SignalFrom37()
    {
        var groups = Rings();
        var chart = ChartModel.Of(new ChartSpec(groups) { Period = 25, Lower = 73.95, Upper = 74.05, Target = 74, Rules = [RunRule.BeyondThree], MovingMean = null })!;
        Assert.Equal((74.001176, 0.02276, 0.00978534), (Math.Round(chart.Limits.Centre, 6), Math.Round(chart.Spreads.Centre, 5), Math.Round(chart.Sigma, 8)));
        Assert.Equal((73.988048, 74.014304, 0.048126), (Math.Round(chart.Limits.Lower, 6), Math.Round(chart.Limits.Upper, 6), Math.Round(chart.Spreads.Upper, 6)));
        Assert.Equal([37, 38, 39], chart.Points.Where(p => p.Rules.Count > 0).Select(p => p.Number));
        Assert.Equal((1.70323, 1.66317, 1.69106), (Math.Round(chart.Within!.Cp!.Value, 5), Math.Round(chart.Within.Cpk, 5), Math.Round(chart.Within.Cpm!.Value, 5)));

        // Warning limits at two standard deviations, as a tour of the package prints them (CRAN vignette of qcc, 2017).
        var warning = 2 * chart.Sigma / Math.Sqrt(5);
        Assert.Equal((73.99242, 74.00993), (Math.Round(chart.Limits.Centre - warning, 5), Math.Round(chart.Limits.Centre + warning, 5)));
        Assert.Equal(0.00924, SubgroupChart.Of([.. groups.Take(25)], SigmaEstimate.GroupDeviation).Spreads.Centre, 5e-8);
    }

    [OpenDataFact]
    public void PistonRings_MovingMeanAndSums_SignalFrom37()
    {
        double[] means = [.. Rings().Select(g => g.Average())];
        var limits = SubgroupChart.Of([.. Rings().Take(25)], SigmaEstimate.GroupRange);
        var moving = new EwmaChart(limits.Means.Centre, limits.Sigma / Math.Sqrt(5));
        Assert.Equal([74.0050896, 74.0073917, 74.0098334, 74.0125467, 74.0125973], moving.Of(means).Skip(35).Select(z => Math.Round(z, 7)));
        Assert.Equal([36, 37, 38, 39], moving.Signals(means));
        Assert.Equal(74.0055521, moving.Steady.Upper, 5e-8);
        double[] z = [.. means.Select(m => (m - limits.Means.Centre) / (limits.Sigma / Math.Sqrt(5)))];
        var sums = new CusumChart(0, 0.5, 5);
        Assert.Equal([4.16248, 7.18705, 10.89716, 15.47561, 17.63184], sums.Of(z).Skip(35).Select(s => Math.Round(s.Above, 5)));
        Assert.Equal([36, 37, 38, 39], sums.Signals(z));
        Assert.All(sums.Of(z), s => Assert.True(s.Below <= 5));
    }

    [OpenDataFact]
    public void Thickness_OfDataplot_HasItsLimitsAndOneGroupOut()
    {
        var groups = Grouped("nist-cc1-thickness.csv", "day", "thickness");
        var chart = ChartModel.Of(new ChartSpec(groups) { Rules = [RunRule.BeyondThree] })!;
        Assert.Equal((23.726, 2.05, 22.54352, 24.90848, 4.334723), (Math.Round(chart.Limits.Centre, 3), Math.Round(chart.Spreads.Centre, 2), Math.Round(chart.Limits.Lower, 5), Math.Round(chart.Limits.Upper, 5), Math.Round(chart.Spreads.Upper, 6)));
        Assert.Equal(0.8206582, SubgroupChart.Of(groups, SigmaEstimate.GroupDeviation).Spreads.Centre, 1e-7);
        var signal = Assert.Single(chart.Points, p => p.Rules.Count > 0);
        Assert.Equal((20, 25.36), (signal.Number, Math.Round(signal.Value, 2)));
    }

    // Dataplot MONITOR-6_3_3_1: counts on 25 wafers; the third lies on the limit, not beyond.
    [OpenDataFact]
    public void Counts_OfDataplot_HaveOneWaferOut()
    {
        var counts = OpenData.Column("nist-6331-counts.csv", "defects");
        var limits = CountLimits.Count(counts.Average());
        Assert.Equal((4, 16, 28), (limits.Lower, limits.Centre, limits.Upper));
        Assert.Equal([24], counts.Index().Where(c => limits.IsBeyond(c.Item)).Select(c => c.Index + 1));
    }

    // Dataplot MONITOR-6_3_3_2: shares of 50.
    [OpenDataFact]
    public void Shares_OfDataplot_HaveTwoSamplesOut()
    {
        var shares = OpenData.Column("nist-6332-proportions.csv", "fraction");
        var limits = CountLimits.Share(shares.Average(), 50);
        Assert.Equal((0.052428, 0.231333, 0.410239), (Math.Round(limits.Lower, 6), Math.Round(limits.Centre, 6), Math.Round(limits.Upper, 6)));
        int[] beyond = [.. shares.Index().Where(c => limits.IsBeyond(c.Item)).Select(c => c.Index + 1)];
        Assert.Equal([15, 23], beyond);
        var again = CountLimits.Share(shares.Index().Where(c => !beyond.Contains(c.Index + 1)).Average(c => c.Item), 50);
        Assert.Equal((0.0407028, 0.215, 0.3892972), (Math.Round(again.Lower, 7), Math.Round(again.Centre, 3), Math.Round(again.Upper, 7)));
    }

    [OpenDataFact]
    public void Boiler_EightAtOnce_HasOneRowBeyond()
    {
        double[][] rows = [.. OpenData.Csv("spc-boiler.csv").Select(row => Boiler.Select(c => double.Parse(row[c], CultureInfo.InvariantCulture)).ToArray())];
        var chart = JointChart.Of(rows);
        Assert.Equal([13.963962, 9.7790836, 5.4726715], chart.Distances.Take(3).Select(d => d > 10 ? Math.Round(d, 6) : Math.Round(d, 7)));
        Assert.Equal((17.575293, 16.572503), (Math.Round(chart.Distances.Max(), 6), Math.Round(chart.Limit, 6)));
        Assert.Equal([8], chart.Signals);
    }

    // The mean of all T² is p(m − 1)/m: known exactly.
    [Fact]
    public void Joint_OfAnyRows_HasTheKnownMean()
    {
        double[][] rows = [[1, 2], [2, 1], [3, 5], [4, 4], [7, 6], [5, 9]];
        Assert.Equal(2 * 5 / 6.0, JointChart.Of(rows).Distances.Average(), 1e-12);
        Assert.Throws<ArgumentException>(() => JointChart.Of([[1, 2], [2, 1], [3, 5]]));
        Assert.Throws<ArgumentException>(() => JointChart.Of([[1, 2], [2, 4], [3, 6], [4, 8], [5, 10]]));
    }

    private static IReadOnlyList<IReadOnlyList<double>> Rings() => Grouped("spc-pistonrings.csv", "sample", "diameter");

    private static IReadOnlyList<IReadOnlyList<double>> Grouped(string file, string by, string value) =>
        [.. OpenData.Csv(file).GroupBy(r => r[by]).Select(g => (IReadOnlyList<double>)[.. g.Select(r => double.Parse(r[value], CultureInfo.InvariantCulture))])];
}
