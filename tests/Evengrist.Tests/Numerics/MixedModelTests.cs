using Evengrist.Numerics.Mixed;

namespace Evengrist.Tests.Numerics;

public sealed class MixedModelTests
{
    [Fact] // Balanced one-way groups: restricted likelihood gives the mean squares' estimates exactly. MSB 24, MSW 2, three of each: (24 − 2)/3.
    public void Fit_BalancedGroups_IsTheTableOfVariance()
    {
        double[] values = [9, 10, 11, 13, 14, 15, 7, 9, 8, 12, 11, 10];
        int[] groups = [0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3];
        var means = values.Chunk(3).Select(c => c.Average()).ToArray();
        var grand = values.Average();
        var between = 3 * means.Sum(m => (m - grand) * (m - grand)) / 3;
        var within = values.Select((v, i) => (v - means[i / 3]) * (v - means[i / 3])).Sum() / 8;
        var fit = MixedModel.Fit(new MixedSpec(values, Ones(12), [groups]))!;
        Assert.Equal(within, fit.Residual, 5);
        Assert.Equal((between - within) / 3, fit.Variances[0], 5);
        Assert.Equal(grand, fit.Coefficients[0], 9);
        Assert.Equal(Math.Sqrt(between / 12), fit.StandardErrors[0], 5);
    }

    [Fact] // Groups alike: the variance between is 0, not negative.
    public void Fit_NothingBetweenGroups_IsZero()
    {
        var fit = MixedModel.Fit(new MixedSpec([1, 3, 1, 3, 1, 3], Ones(6), [[0, 0, 1, 1, 2, 2]]))!;
        Assert.Equal(0, fit.Variances[0], 9);
        Assert.Equal(1.2, fit.Residual, 6); // Sum of squares 6 over 5.
    }

    [OpenDataFact] // LS-54: R package lme4 1.1-31 on its data set cake; slope equals the package's documentation, from memory.
    public void Fit_CakesByRecipeAndTemperature_IsAsOfLme4()
    {
        var rows = OpenData.Csv("cake-bake.csv");
        double[] angle = OpenData.Column("cake-bake.csv", "angle"), degrees = OpenData.Column("cake-bake.csv", "temp");
        int[] batches = [.. rows.Select(r => (r["recipe"][0] * 100) + int.Parse(r["replicate"], System.Globalization.CultureInfo.InvariantCulture))];
        var linear = MixedModel.Fit(new MixedSpec(angle, [.. rows.Select((r, i) => (IReadOnlyList<double>)[1, degrees[i], Is(r["recipe"], "B"), Is(r["recipe"], "C")])], [batches]))!;
        Assert.Equal([1.5158730, 0.1580317, -1.4777778, -1.5222222], linear.Coefficients.Select(c => Math.Round(c, 7)));
        Assert.Equal(1693.8443, linear.Criterion, 4);
        double[] levels = [175, 185, 195, 205, 215, 225];
        var full = MixedModel.Fit(new MixedSpec(angle, [.. rows.Select((r, i) => (IReadOnlyList<double>)[.. new[] { "A", "B", "C" }.SelectMany(x => levels.Select(t => r["recipe"] == x && degrees[i] == t ? 1.0 : 0))])], [batches]))!;
        Assert.Equal((41.8370, 20.4709), (Math.Round(full.Variances[0], 4), Math.Round(full.Residual, 4)));
    }

    [OpenDataFact] // LS-32: lme4 on the nested study of egg powder (package faraway); equal the textbook's, from memory.
    public void Fit_NestedLaboratories_IsAsOfLme4()
    {
        var rows = OpenData.Csv("interlab-eggs.csv");
        int[] Number(params string[] names) => [.. rows.Select(r => string.Join('/', names.Select(n => r[n]))) is var keys ? keys.Select(k => keys.ToList().IndexOf(k)) : []];
        var fit = MixedModel.Fit(new MixedSpec(OpenData.Column("interlab-eggs.csv", "Fat"), Ones(rows.Count), [Number("Lab"), Number("Lab", "Technician"), Number("Lab", "Technician", "Sample")]))!;
        Assert.Equal([0.0059199, 0.0069802, 0.0030646], fit.Variances.Select(v => Math.Round(v, 7)));
        Assert.Equal(0.0071958, fit.Residual, 7);
    }

    [Fact]
    public void Fit_WhatCannotBe_IsSaid()
    {
        Assert.Null(MixedModel.Fit(new MixedSpec([1, 2, 3, 4], [[1, 1], [1, 1], [1, 1], [1, 1]], [[0, 0, 1, 1]])));
        Assert.Null(MixedModel.Fit(new MixedSpec([2, 2, 2, 2], Ones(4), [[0, 0, 1, 1]])));
        Assert.Throws<ArgumentException>(() => MixedModel.Fit(new MixedSpec([1, 2, 3], Ones(3), [[0, 1, 2]])));
        Assert.Equal(3, new MixedSpec([1], [], [[0, 1]]).Faults().Count(f => f.Length > 0) - 1);
    }

    private static double Is(string read, string wanted) => read == wanted ? 1 : 0;

    private static IReadOnlyList<double>[] Ones(int n) => [.. Enumerable.Range(0, n).Select(_ => (IReadOnlyList<double>)[1])];
}
