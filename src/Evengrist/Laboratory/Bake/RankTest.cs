using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Bake;

/// <summary>Several breads ranked by several bakers: whether they differ at all [Friedman, from memory].</summary>
/// <param name="RankSums">Of each bread.</param>
/// <param name="Q">Friedman's statistic.</param>
/// <param name="P">Chance of so much where they do not differ, by χ².</param>
/// <param name="LeastDifference">Two rank sums farther apart than this differ, one comparison at 5 %.</param>
public sealed record RankTest(IReadOnlyList<double> RankSums, double Q, double P, double LeastDifference)
{
    /// <summary>Judges ranks.</summary>
    /// <param name="ranks">A row for each baker: 1 for the first to k for the last; ties share the mean of their ranks.</param>
    /// <exception cref="ArgumentException">They are no ranks; the message says which row.</exception>
    public static RankTest Of(IReadOnlyList<IReadOnlyList<double>> ranks)
    {
        ArgumentNullException.ThrowIfNull(ranks);
        if (Fault(ranks) is { } fault)
        {
            throw new ArgumentException(fault, nameof(ranks));
        }

        double b = ranks.Count, k = ranks[0].Count;
        double[] sums = [.. Enumerable.Range(0, ranks[0].Count).Select(i => ranks.Sum(r => r[i]))];
        var q = (12 * sums.Sum(r => r * r) / (b * k * (k + 1))) - (3 * b * (k + 1));
        return new(sums, q, 1 - ChiSquared.CDF(k - 1, Math.Max(0, q)), 1.96 * Math.Sqrt(b * k * (k + 1) / 6));
    }

    /// <summary>What is wrong with ranks, in a sentence; null where nothing is.</summary>
    public static string? Fault(IReadOnlyList<IReadOnlyList<double>> ranks)
    {
        ArgumentNullException.ThrowIfNull(ranks);
        if (ranks.Count < 2 || ranks[0].Count < 2)
        {
            return "Two bakers and two breads at least are needed.";
        }

        var k = ranks[0].Count;
        var wrong = ranks.Index().FirstOrDefault(r => r.Item.Count != k || r.Item.Any(x => x < 1 || x > k) || Math.Abs(r.Item.Sum() - (k * (k + 1) / 2.0)) > 1e-9, (-1, []));
        return wrong.Item1 < 0 ? null : $"Row {wrong.Item1 + 1} is no ranking of {k} breads: 1 to {k}, ties with the mean of their ranks.";
    }
}
