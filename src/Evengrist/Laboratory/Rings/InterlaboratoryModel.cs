using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Evengrist.Laboratory.Rings;

/// <summary>Precision of a method by a ring test, after ISO 5725 and ASTM E 691 [formulas from memory]. Model: docs/model/ring-tests.md.</summary>
public static class InterlaboratoryModel
{
    /// <summary>Fewest laboratories.</summary>
    public const int FewestLaboratories = 3;

    /// <summary>Each sample by itself, in the order in which they come.</summary>
    /// <param name="results">At least three laboratories, each with the same number of results on a sample, two or more.</param>
    /// <exception cref="ArgumentException">They are fewer, or of different numbers.</exception>
    public static IReadOnlyList<SamplePrecision> Of(IReadOnlyList<RingResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        return Fault(results) is { } fault ? throw new ArgumentException(fault, nameof(results)) : [.. results.GroupBy(r => r.Sample).Select(s => One(s.Key, [.. s.GroupBy(r => r.Laboratory)]))];
    }

    /// <summary>What is wrong, in a sentence that says what to do; null where nothing is.</summary>
    public static string? Fault(IReadOnlyList<RingResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        return results.Count == 0 ? "There are no results." : results.Any(r => !double.IsFinite(r.Value)) ? "A value is no number."
            : results.GroupBy(r => r.Sample).Select(s => (s.Key, Counts: s.GroupBy(r => r.Laboratory).Select(l => l.Count()).ToArray())).Select(s =>
                s.Counts.Length < FewestLaboratories ? $"Sample {s.Key} was read by {s.Counts.Length} laboratories: {FewestLaboratories} or more are needed."
                : s.Counts.Distinct().Count() > 1 || s.Counts[0] < 2 ? $"Sample {s.Key}: every laboratory gives the same number of results, two or more." : null).FirstOrDefault(f => f is not null);
    }

    private static SamplePrecision One(string sample, IGrouping<string, RingResult>[] laboratories)
    {
        var (p, n) = (laboratories.Length, laboratories[0].Count());
        var cells = laboratories.Select(l => (l.Key, Moments: l.Select(r => r.Value).MeanStandardDeviation())).ToArray();
        var (mean, between) = cells.Select(c => c.Moments.Mean).MeanStandardDeviation();
        var variances = cells.Sum(c => c.Moments.StandardDeviation * c.Moments.StandardDeviation);
        var within = Math.Sqrt(variances / p);
        var across = Math.Max(Math.Sqrt((between * between) + (within * within * (n - 1) / n)), within);
        return new SamplePrecision(
            sample, p, n, mean, between, within, across,
            [.. cells.Select(c => (c.Key, between > 0 ? (c.Moments.Mean - mean) / between : 0, within > 0 ? c.Moments.StandardDeviation / within : 0))],
            variances > 0 ? cells.Max(c => c.Moments.StandardDeviation * c.Moments.StandardDeviation) / variances : 0, (CochranLimit(p, n, 0.05), CochranLimit(p, n, 0.01)), LimitOfH(p), LimitOfK(p, n));
    }

    private static double CochranLimit(int p, int n, double risk) => 1 / (1 + ((p - 1) / FisherSnedecor.InvCDF(n - 1, (p - 1.0) * (n - 1), 1 - (risk / p))));

    private static double LimitOfH(int p)
    {
        var t = StudentT.InvCDF(0, 1, p - 2, 1 - (0.005 / 2));
        return (p - 1) * t / Math.Sqrt(p * ((t * t) + p - 2));
    }

    private static double LimitOfK(int p, int n) => Math.Sqrt(p / (1 + ((p - 1) / FisherSnedecor.InvCDF(n - 1, (p - 1.0) * (n - 1), 1 - 0.005))));
}
