using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Evengrist.Laboratory.Rings;

/// <summary>Mean and spread that a few wild results hardly move. Model: docs/model/ring-tests.md.</summary>
/// <param name="Mean">The robust mean.</param>
/// <param name="Deviation">The robust standard deviation of one result.</param>
/// <param name="Uncertainty">Standard uncertainty of the mean: 1.25 · deviation/√n.</param>
public sealed record RobustMean(double Mean, double Deviation, double Uncertainty)
{
    private const double Width = 1.5, NormalMad = 1.4826, Rounds = 1000;

    /// <summary>Algorithm A of ISO 13528 [from memory].</summary>
    /// <param name="values">Three or more, each a number.</param>
    /// <exception cref="ArgumentException">There are fewer.</exception>
    public static RobustMean AlgorithmA(IReadOnlyList<double> values)
    {
        var (mean, deviation) = Start(values);
        for (var round = 0; round < Rounds; round++)
        {
            var drawnIn = DrawnIn(values, mean, Width * deviation);
            var (next, spread) = (drawnIn.Average(), 1.134 * drawnIn.StandardDeviation());
            var (isStill, _) = (Math.Abs(next - mean) + Math.Abs(spread - deviation) <= 1e-12 * (Math.Abs(mean) + spread), mean = next);
            deviation = spread;
            if (isStill)
            {
                break;
            }
        }

        return new(mean, deviation, 1.25 * deviation / Math.Sqrt(values.Count));
    }

    /// <summary>Huber's mean with the median's absolute deviation (× 1.4826) as scale.</summary>
    /// <param name="values">Three or more, each a number.</param>
    /// <exception cref="ArgumentException">There are fewer.</exception>
    public static double Huber(IReadOnlyList<double> values)
    {
        var (mean, deviation) = Start(values);
        for (var round = 0; round < Rounds; round++)
        {
            var next = DrawnIn(values, mean, Width * deviation).Average();
            if (Math.Abs(next - mean) <= 1e-12 * Math.Abs(mean))
            {
                return next;
            }

            mean = next;
        }

        return mean;
    }

    /// <summary>Grubbs: the farthest value in standard deviations from the mean, and what that stays below by chance (two-sided, 95 %).</summary>
    /// <param name="values">Three or more.</param>
    /// <exception cref="ArgumentException">There are fewer.</exception>
    public static (double Farthest, double Limit) Grubbs(IReadOnlyList<double> values)
    {
        Start(values);
        var (mean, deviation) = values.MeanStandardDeviation();
        var n = values.Count;
        var t = StudentT.InvCDF(0, 1, n - 2, 1 - (0.05 / (2 * n)));
        return (deviation > 0 ? values.Max(v => Math.Abs(v - mean)) / deviation : 0, (n - 1) / Math.Sqrt(n) * Math.Sqrt(t * t / (n - 2 + (t * t))));
    }

    private static (double Median, double Deviation) Start(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 3 || !values.All(double.IsFinite))
        {
            throw new ArgumentException("A robust mean needs three values or more, each a number.", nameof(values));
        }

        var median = values.Median();
        return (median, NormalMad * values.Select(v => Math.Abs(v - median)).Median());
    }

    private static double[] DrawnIn(IReadOnlyList<double> values, double mean, double half) => [.. values.Select(v => Math.Clamp(v, mean - half, mean + half))];
}
