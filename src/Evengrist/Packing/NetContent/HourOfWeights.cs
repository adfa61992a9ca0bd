using MathNet.Numerics.Statistics;
using NodaTime;

namespace Evengrist.Packing.NetContent;

/// <summary>An hour of a checkweigher in figures. Net weights are by the tare that the checkweigher took off.</summary>
/// <param name="From">When the hour begins.</param>
/// <param name="Count">Packages that passed.</param>
/// <param name="Rejected">Packages that were thrown out.</param>
/// <param name="Mean">Mean net weight of those that passed, grams.</param>
/// <param name="Deviation">Their standard deviation, grams; 0 for one.</param>
/// <param name="Least">Lightest of them, grams.</param>
/// <param name="Most">Heaviest of them, grams.</param>
/// <param name="Tare">Mean of the tare taken off, grams.</param>
public sealed record HourOfWeights(Instant From, int Count, int Rejected, double Mean, double Deviation, double Least, double Most, double Tare)
{
    /// <summary>The figures of an hour; null where no package passed.</summary>
    public static HourOfWeights? Of(WeighedHour hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        double[] net = [.. hour.Passed.Select(p => p.NetGrams)];
        if (net.Length == 0)
        {
            return null;
        }

        var (mean, deviation) = net.MeanStandardDeviation();
        return new(hour.From, net.Length, hour.Packages.Count - net.Length, Rounded(mean), net.Length > 1 ? Rounded(deviation) : 0, net.Min(), net.Max(), Rounded(hour.Passed.Average(p => p.TareTenths / 10.0)));
    }

    /// <summary>Several hours as one: n, mean and standard deviation within and between them together. Null where there is none.</summary>
    /// <param name="hours">Hours of one line and product.</param>
    public static (int Count, double Mean, double Deviation)? Together(IReadOnlyCollection<HourOfWeights> hours)
    {
        ArgumentNullException.ThrowIfNull(hours);
        var count = hours.Sum(h => h.Count);
        if (count == 0)
        {
            return null;
        }

        var mean = hours.Sum(h => h.Count * h.Mean) / count;
        var squares = hours.Sum(h => ((h.Count - 1) * h.Deviation * h.Deviation) + (h.Count * (h.Mean - mean) * (h.Mean - mean)));
        return (count, mean, count > 1 ? Math.Sqrt(squares / (count - 1)) : 0);
    }

    // Six decimals of a gram: far below what a scale shows, and the same text whichever way the sums ran.
    private static double Rounded(double grams) => Math.Round(grams, 6);
}
