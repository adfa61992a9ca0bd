using Evengrist.Numerics;

namespace Evengrist.Tests.Numerics;

public sealed class LineFitTests
{
    /// <summary>Norris, NIST StRD linear least squares, lower difficulty: 36 pairs of an ozone monitor and its reference. Data and certified values from memory; that they agree to nine figures says that both were remembered rightly.</summary>
    private static readonly (double Y, double X)[] Norris =
    [
        (0.1, 0.2), (338.8, 337.4), (118.1, 118.2), (888.0, 884.6), (9.2, 10.1), (228.1, 226.5), (668.5, 666.3), (998.5, 996.3), (449.1, 448.6), (778.9, 777.0), (559.2, 558.2), (0.3, 0.4),
        (0.1, 0.6), (778.1, 775.5), (668.8, 666.9), (339.3, 338.0), (448.9, 447.5), (10.8, 11.6), (557.7, 556.0), (228.3, 228.1), (998.0, 995.8), (888.8, 887.6), (119.6, 120.2), (0.3, 0.3),
        (0.6, 0.3), (557.6, 556.8), (339.3, 339.1), (888.0, 887.2), (998.5, 999.0), (778.9, 779.0), (10.2, 11.1), (117.6, 118.3), (228.9, 229.2), (668.4, 669.1), (449.2, 448.9), (0.2, 0.5),
    ];

    /// <summary>Pearson's ten points (1901) with the weights of York (1966): x, weight of x, y, weight of y. Data and result from memory.</summary>
    private static readonly (double X, double WeightX, double Y, double WeightY)[] Pearson =
    [
        (0.0, 1000, 5.9, 1), (0.9, 1000, 5.4, 1.8), (1.8, 500, 4.4, 4), (2.6, 800, 4.6, 8), (3.3, 200, 3.5, 20), (4.4, 80, 3.7, 20), (5.2, 60, 2.8, 70), (6.1, 20, 2.8, 70), (6.5, 1.8, 2.4, 100), (7.4, 1, 1.5, 500),
    ];

    [Fact]
    public void Through_Norris_HasTheCertifiedValues()
    {
        var line = LineFit.Through([.. Norris.Select(p => new LinePoint(p.X, p.Y, 0, 1))]);
        Assert.Equal(-0.262323073774029, line.Offset, 9);
        Assert.Equal(1.00211681802045, line.Slope, 11);
        Assert.Equal(0.884796396144373, line.Scatter, 9);
        Assert.Equal(0.232818234301152, line.Scatter * line.OffsetError, 9);
        Assert.Equal(0.429796848199937e-3, line.Scatter * line.SlopeError, 11);
    }

    [Fact]
    public void Through_PearsonWithYorksWeights_HasYorksLine()
    {
        var line = LineFit.Through([.. Pearson.Select(p => new LinePoint(p.X, p.Y, 1 / Math.Sqrt(p.WeightX), 1 / Math.Sqrt(p.WeightY)))]);
        Assert.Equal(5.47991022, line.Offset, 6);
        Assert.Equal(-0.480533407, line.Slope, 7);
        Assert.Equal(11.8663531, line.Squares, 4);
        Assert.Equal(0.2949707, line.OffsetError, 1e-6);
        Assert.Equal(0.0579850, line.SlopeError, 1e-7);
    }

    /// <summary>Set against weighed and weighed against set are one line: what holds of the one's slope holds of the other's turned round.</summary>
    [Fact]
    public void Through_TurnedRound_IsTheSameLine()
    {
        var there = LineFit.Through([.. Pearson.Select(p => new LinePoint(p.X, p.Y, 1 / Math.Sqrt(p.WeightX), 1 / Math.Sqrt(p.WeightY)))]);
        var back = LineFit.Through([.. Pearson.Select(p => new LinePoint(p.Y, p.X, 1 / Math.Sqrt(p.WeightY), 1 / Math.Sqrt(p.WeightX)))]);
        Assert.Equal(1, there.Slope * back.Slope, 9);
        Assert.Equal(there.Squares, back.Squares, 8);
    }

    [Fact]
    public void Through_InAnyOrder_IsTheSame()
    {
        LinePoint[] points = [.. Norris.Select(p => new LinePoint(p.X, p.Y, 0.2, 0.5))];
        Assert.Equal(LineFit.Through(points).Slope, LineFit.Through([.. points.Reverse()]).Slope, 12);
    }

    [Fact]
    public void Through_WhatIsNoLine_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => LineFit.Through([new(1, 1, 0, 1)]));
        Assert.Throws<ArgumentException>(() => LineFit.Through([new(1, 1, 0, 1), new(1, 2, 0, 1)]));
        Assert.Throws<ArgumentException>(() => LineFit.Through([new(1, 1, 0, 0), new(2, 2, 0, 1)]));
    }
}
