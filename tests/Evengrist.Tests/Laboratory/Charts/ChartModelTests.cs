using Evengrist.Laboratory.Charts;

namespace Evengrist.Tests.Laboratory.Charts;

/// <summary>Whole charts: limits of a period held against what comes after it. Values invented, answers by hand.</summary>
public sealed class ChartModelTests
{
    // Period 9 11 9 11 9 11: mean 10, moving range 2, σ 2/1.128379 = 1.772454.
    private static readonly double[] Steady = [9, 11, 9, 11, 9, 11];

    [Fact]
    public void Chart_OfAShiftAfterThePeriod_KeepsThePeriodsLimits()
    {
        var chart = ChartModel.Of(Singles([.. Steady, 16, 10]) with { Period = 6, MovingMean = (0.5, 3), Sums = (0.5, 4) })!;
        Assert.Equal((10.0, SigmaEstimate.MovingRange, 6), (chart.Limits.Centre, chart.From, chart.Period));
        Assert.Equal(1.772454, chart.Sigma, 1e-6);
        Assert.Equal(10 + (3 * 1.772454), chart.Limits.Upper, 1e-5);
        Assert.Equal([RunRule.BeyondThree], chart.Points[6].Rules);
        Assert.True(chart.Points[6].Signals && !chart.Points[5].Signals);
        Assert.Null(chart.Points[0].Spread);
        Assert.Equal((5.0, false), (chart.Points[6].Spread, chart.Points[6].IsSpreadBeyond)); // 3.2665 · 2 = 6.53.
        Assert.Equal(6 / 1.772454 - 0.5, chart.Points[6].Sums!.Value.Above - (chart.Points[5].Sums!.Value.Above), 1e-5);
        Assert.Contains("20 or more are usual", chart.Remarks[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Chart_OfGroups_JudgesMeansByTheSpreadWithin()
    {
        IReadOnlyList<double>[] groups = [[1, 2, 3], [2, 3, 1], [3, 1, 2], [6, 7, 5]];
        var chart = ChartModel.Of(new ChartSpec(groups) { Period = 3, Lower = 0, Upper = 4, Target = 2 })!;
        Assert.Equal((2.0, 2.0), (chart.Limits.Centre, chart.Spreads.Centre));
        Assert.Equal([4], chart.Points.Where(p => p.Signals).Select(p => p.Number));
        Assert.Equal(2 / (3 * (2 / ChartConstants.Of(3).D2)), chart.Within!.Cpk, 1e-12);
        Assert.Equal(2 / (3 * Math.Sqrt(6.0 / 8)), chart.Overall!.Cpk, 1e-12); // Nine values, squares 6, 8 degrees of freedom.
    }

    [Fact]
    public void Chart_OfValuesThatDoNotDiffer_HasNoLimits() => Assert.Null(ChartModel.Of(Singles([5, 5, 5])));

    [Fact]
    public void Faults_OfWhatCannotBeCharted_NameEach()
    {
        Assert.Contains("2 to 10000 are charted", Assert.Single(Singles([1]).Faults()), StringComparison.Ordinal);
        Assert.Contains("all of one size", Assert.Single(new ChartSpec([[1, 2], [1]]).Faults()), StringComparison.Ordinal);
        Assert.Contains("no number", Assert.Single(Singles([1, double.NaN]).Faults()), StringComparison.Ordinal);
        var bad = Singles(Steady) with { Period = 7, MovingMean = (0, 3), Sums = (0.5, 0), Rules = [RunRule.None], Lower = 5, Upper = 5 };
        Assert.Equal(5, bad.Faults().Count);
        Assert.Throws<ArgumentException>(() => ChartModel.Of(bad));
        Assert.Single((new ChartSpec([[1, 2], [2, 3]]) { From = SigmaEstimate.Overall }).Faults());
    }

    private static ChartSpec Singles(double[] values) => new([.. values.Select(v => (IReadOnlyList<double>)[v])]);
}
