using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Tests.Mix;

public sealed class GateCalibrationTests
{
    private static readonly Instant Begin = Instant.FromUtc(2025, 12, 1, 12, 0);

    private static GatePoint Point(int n, double set, double weighed, double setError = 0.02, double weighError = 0.02) => new("B06", $"S{n}", Begin + Duration.FromDays(n), set, weighed, setError, weighError);

    private static GateFitted Fitted(params GatePoint[] points) => Assert.IsType<GateFitted>(Assert.Single(GateCalibration.Of(points)));

    [Fact]
    public void Of_PointsOnALine_FindsItAndTheSettingThatGivesARate()
    {
        var fit = Fitted([.. Enumerable.Range(0, 6).Select(i => Point(i, 4 + i, 0.3 + (0.95 * (4 + i))))]);
        Assert.Equal(0.3, fit.Line.Offset, 9);
        Assert.Equal(0.95, fit.Line.Slope, 9);
        Assert.Equal((7 - 0.3) / 0.95, fit.SettingFor(7), 9);
        Assert.Equal(1, fit.Widening);
        Assert.Equal(2.776, fit.Coverage, 3); // Student's t of four degrees of freedom, 95 %: printed tables
        Assert.False(fit.IsBeyond(7));
        Assert.True(fit.IsBeyond(12));
        Assert.Equal(0, fit.SettingFor(0.1));
    }

    /// <summary>Invented gate: 95 % bands hold the true slope in about 95 % of many histories. Of 1 000 histories 930 to 970 leave three standard deviations (0.7 %) on either side.</summary>
    [Fact]
    public void Of_ManySimulatedHistories_HoldTheTrueSlopeAsOftenAsTheySay()
    {
        var dice = new Random(20260114);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - dice.NextDouble())) * Math.Cos(2 * Math.PI * dice.NextDouble());
        var held = 0;
        for (var history = 0; history < 1000; history++)
        {
            var points = Enumerable.Range(0, 12).Select(i => (True: 5 + (0.4 * i), i)).Select(p => Point(p.i, p.True + (0.05 * Normal()), 0.2 + (0.97 * p.True) + (0.10 * Normal()), 0.05, 0.05)).ToArray();
            var fit = Fitted(points);
            held += Math.Abs(fit.Line.Slope - 0.97) <= fit.SlopeBand ? 1 : 0;
        }

        Assert.InRange(held, 930, 985); // errors are never taken smaller than the weighers' own, so that the bands may hold a little more
    }

    [Fact]
    public void Of_ANewestSheetOffTheLine_IsADrift()
    {
        double[] scatter = [0.02, -0.01, 0.015, -0.02, 0.01, -0.015, 0.02];
        GatePoint[] steady = [.. scatter.Select((s, i) => Point(i, 4 + (0.5 * i), (4 + (0.5 * i)) + s))];
        Assert.False(Fitted([.. steady, Point(7, 6, 6.02)]).Drift!.IsOut);
        var drift = Fitted([.. steady, Point(7, 6, 6.6)]).Drift!;
        Assert.True(drift.IsOut);
        Assert.Equal("S7", drift.Sheet);
        Assert.InRange(drift.Residual, 0.55, 0.65);
    }

    [Fact]
    public void Of_TooLittle_SaysSo()
    {
        Assert.Contains("Too few: 4 of at least 5", Assert.IsType<GateNotFitted>(GateCalibration.Of(Enumerable.Range(0, 4).Select(i => Point(i, 4 + i, 4 + i))).Single()).Reason, StringComparison.Ordinal);
        Assert.Contains("Always set alike", Assert.IsType<GateNotFitted>(GateCalibration.Of(Enumerable.Range(0, 9).Select(i => Point(i, 4 + (0.01 * i), 4))).Single()).Reason, StringComparison.Ordinal);
        double[] odd = [5, 3, 6, 2, 5, 3];
        Assert.Contains("does not follow", Assert.IsType<GateNotFitted>(GateCalibration.Of(odd.Select((w, i) => Point(i, 4 + i, w))).Single()).Reason, StringComparison.Ordinal);
        Assert.Empty(GateCalibration.Of([]));
    }

    [Fact]
    public void Of_PointsInAnyOrder_IsTheSame()
    {
        double[] scatter = [0.02, -0.05, 0.04, -0.02, 0.01, -0.03, 0.02];
        GatePoint[] points = [.. scatter.Select((s, i) => Point(i, 4 + (0.5 * i), (4 + (0.5 * i)) + s))];
        var (there, back) = (Fitted(points), Fitted([.. points.Reverse()]));
        Assert.Equal(there.Line.Slope, back.Line.Slope, 12);
        Assert.Equal(there.Drift!.Residual, back.Drift!.Residual, 10);
    }
}
