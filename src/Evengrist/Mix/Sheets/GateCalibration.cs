using Evengrist.Numerics;
using MathNet.Numerics.Distributions;

namespace Evengrist.Mix.Sheets;

/// <summary>How gates give what they are set to, from what was weighed over past sheets. Page: docs/model/mix.md.</summary>
public static class GateCalibration
{
    /// <summary>Fewer sheets than this say nothing [design].</summary>
    public const int LeastSheets = 5;

    /// <summary>Settings have to differ by this share of their mean, or the slope is not seen [design].</summary>
    public const double LeastSpread = 0.1;

    /// <summary>Every gate that has a point, by bin.</summary>
    /// <param name="points">What was set and weighed, in any order.</param>
    public static IReadOnlyList<GateFit> Of(IEnumerable<GatePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        return [.. points.GroupBy(p => p.Bin, StringComparer.OrdinalIgnoreCase).OrderBy(g => g.Key, StringComparer.OrdinalIgnoreCase).Select(g => Of(g.Key, [.. g.OrderBy(p => p.At)]))];
    }

    private static GateFit Of(string bin, GatePoint[] points)
    {
        if (points.Length < LeastSheets)
        {
            return new GateNotFitted(bin, points.Length, FormattableString.Invariant($"Too few: {points.Length} of at least {LeastSheets} sheets that were drawn."));
        }

        var (least, most, mean) = (points.Min(p => p.SetTonnesPerHour), points.Max(p => p.SetTonnesPerHour), points.Average(p => p.SetTonnesPerHour));
        if (most - least < LeastSpread * mean)
        {
            return new GateNotFitted(bin, points.Length, FormattableString.Invariant($"Always set alike, {least:0.00} to {most:0.00} t/h: a line needs settings that differ by {100 * LeastSpread:0} % or more."));
        }

        var line = LineFit.Through([.. points.Select(p => p.Point)]);
        var (widening, coverage) = (Math.Max(1, line.Scatter), Coverage(points.Length));
        return line.Slope <= coverage * widening * line.SlopeError
            ? new GateNotFitted(bin, points.Length, FormattableString.Invariant($"What is weighed does not follow what is set: slope {line.Slope:0.00} ± {coverage * widening * line.SlopeError:0.00}. Look at gate and weigher."))
            : new GateFitted(bin, points.Length, line, widening, coverage, least, most, DriftOf(points));
    }

    // The newest sheet is judged by a line in which it has no part.
    private static GateDrift? DriftOf(GatePoint[] points)
    {
        var (others, newest) = (points[..^1], points[^1]);
        if (others.Length < LeastSheets || others.All(p => p.SetTonnesPerHour == others[0].SetTonnesPerHour))
        {
            return null;
        }

        var line = LineFit.Through([.. others.Select(p => p.Point)]);
        var own = (newest.WeighedUncertainty * newest.WeighedUncertainty) + Math.Pow(line.Slope * newest.SetUncertainty, 2);
        var band = Coverage(others.Length) * Math.Max(1, line.Scatter) * Math.Sqrt(own + Math.Pow(line.ErrorAt(newest.SetTonnesPerHour), 2));
        return new GateDrift(newest.Sheet, newest.WeighedTonnesPerHour - line.At(newest.SetTonnesPerHour), band);
    }

    private static double Coverage(int points) => StudentT.InvCDF(0, 1, points - 2, 0.975);
}
