using Evengrist.Milling.Draws;
using Evengrist.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Tests.Milling.Draws;

/// <summary>Percentiles and spreads of draws against laws of textbooks.</summary>
public sealed class DrawnFigureTests
{
    [Fact]
    public void Figure_LinearInNormals_HasTheNormalsPercentiles()
    {
        // 3 + 2 z − w/2: normal, mean 3, variance 4.25; 5 % and 95 % of the normal lie 1.644854 deviations off [tables of the normal]. Bounds: four standard errors of 40,000 draws, that of the percentile √(p(1 − p)/n)/φ.
        var draws = Enumerable.Range(0, 40_000).Select(i => new SeededDraws(7, i)).Select(d => 3 + (2 * d.Normal()) - (0.5 * d.Normal()));
        var (figure, sd) = (DrawnFigure.Of(draws)!, Math.Sqrt(4.25));
        Assert.InRange((figure.Mean - 3) / sd, -0.02, 0.02);
        Assert.InRange(figure.StandardDeviation / sd, 0.985, 1.015);
        Assert.InRange((figure.Median - 3) / sd, -0.026, 0.026);
        Assert.InRange(((figure.Low - 3) / sd) + 1.644854, -0.043, 0.043);
        Assert.InRange(((figure.High - 3) / sd) - 1.644854, -0.043, 0.043);
    }

    [Fact]
    public void Percentiles_OfEvenDraws_HoldWhatOrderStatisticsSay()
    {
        // Of n even draws in order the distance from the j-th to the k-th is distributed as Beta(k − j, n + 1 − k + j) [order statistics, memory]. Here the percentiles stand at places 20.9 and 379.1 of 399:
        // the mean of what lies between, in proportion between two draws too, is (n − 1) 0.9/(n + 1); the variance is that of Beta at most.
        const int n = 399;
        const int times = 2000;
        var held = Enumerable.Range(0, times).Select(t =>
        {
            var draws = new SeededDraws(11, t);
            var figure = DrawnFigure.Of(Enumerable.Range(0, n).Select(_ => draws.Uniform()))!;
            return figure.High - figure.Low;
        }).ToArray();

        var (mean, share) = (held.Average(), (n - 1) * 0.9 / (n + 1));
        var error = Math.Sqrt(share * (1 - share) / (n + 2) / times);
        Assert.InRange((mean - share) / error, -4, 4);
    }

    [Fact]
    public void Figure_WhatIsNoNumber_DoesNotCount()
    {
        Assert.Null(DrawnFigure.Of([double.NaN, 1, double.NaN]));
        Assert.Equal(new DrawnFigure(2, Math.Sqrt(2), 1.1, 2, 2.9), DrawnFigure.Of([3, double.NaN, 1])!);
    }

    [Theory]
    [InlineData(10, 1, 10_000, false)] // the same
    [InlineData(10.2, 1.1, 10_000, false)] // a little
    [InlineData(10.3, 1, 10_000, true)] // the mean by more than a quarter of its ±
    [InlineData(10, 1.3, 10_000, true)] // the spread by more than a fifth
    [InlineData(10, 0.7, 10_000, true)]
    [InlineData(10.3, 1.2, 200, false)] // no more than so few draws may make of it
    public void Beside_DifferByMoreThanChanceAndByWhatMatters(double mean, double spread, int draws, bool differ)
        => Assert.Equal(differ, new DrawnBeside(new DrawnFigure(mean, spread, 0, mean, 0), new Evengrist.Milling.OnPaper.Estimate(10, 1), draws).Differ);

    [Fact]
    public void Beside_OfWhatDoesNotVary_IsTheSame()
        => Assert.False(new DrawnBeside(new DrawnFigure(1e-9, 1e-8, 0, 0, 0), new Evengrist.Milling.OnPaper.Estimate(0, 0), 10_000).Differ);

    [Fact]
    public void Root_TimesItself_IsTheCovariance()
    {
        var covariance = Matrix<double>.Build.DenseOfArray(new[,] { { 4, 2, 0, 1 }, { 2, 3, 0, -0.5 }, { 0, 0, 0, 0 }, { 1, -0.5, 0, 2 } });
        var root = new CovarianceRoot(covariance);
        var columns = Enumerable.Range(0, 4).Select(k =>
        {
            var (z, column) = (new double[4], new double[4]);
            z[k] = 1;
            root.Spread(Vector<double>.Build.Dense(4), z, column);
            return Vector<double>.Build.Dense(column);
        });
        var back = columns.Aggregate(Matrix<double>.Build.Dense(4, 4), (sum, c) => sum + c.OuterProduct(c));
        Assert.True((back - covariance).InfinityNorm() < 1e-14);
    }
}
