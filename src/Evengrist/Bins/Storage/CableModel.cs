using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>Looks at the cables of a bin: the newest round, how fast each point warms, and which stand out.</summary>
/// <remarks>
/// Rate of rise: least squares over the readings of the three weeks up to the newest one, at least two of them six days apart [design].
/// The season: the median rate over all points of all bins, at least eight of them [design]. Model: docs/model/safe-storage.md.
/// </remarks>
public static class CableModel
{
    private const int LeastForSeason = 8;
    private static readonly Duration LeastSpan = Duration.FromDays(6), OneRound = Duration.FromDays(7);

    /// <summary>The window of the rate of rise: three weeks. Ours.</summary>
    internal static Duration Window { get; } = Duration.FromDays(21);

    /// <summary>The state of every point that was read within a week of the bin's newest reading, by cable and height.</summary>
    /// <param name="readings">Readings of one bin, in any order.</param>
    /// <param name="season">What the season does, °C a week; null where it is not known.</param>
    public static IReadOnlyList<CableState> Of(IReadOnlyList<CableReading> readings, double? season)
    {
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Count == 0)
        {
            return [];
        }

        var newest = readings.Max(r => r.At);
        var points = readings.GroupBy(r => r.Point).Select(g => (Point: g.Key, Last: g.MaxBy(r => r.At)!, Rise: Rise(g))).Where(p => p.Last.At > newest - OneRound).ToArray();
        var median = Median([.. points.Select(p => p.Last.Celsius)]);
        return [.. points.OrderBy(p => p.Point.Cable, StringComparer.Ordinal).ThenBy(p => p.Point.Metres)
            .Select(p => new CableState(p.Point, p.Last.At, p.Last.Celsius, p.Last.Celsius - median, p.Rise, season))];
    }

    /// <summary>What the season does: the median rate of rise of the points of many bins, °C a week; null where fewer than eight rates are known.</summary>
    public static double? Season(IEnumerable<CableState> points)
    {
        double[] rises = [.. points.Select(p => p.RisePerWeek).OfType<double>()];
        return rises.Length < LeastForSeason ? null : Median(rises);
    }

    private static double? Rise(IEnumerable<CableReading> point)
    {
        CableReading[] all = [.. point];
        var newest = all.Max(r => r.At);
        (double Weeks, double Celsius)[] recent = [.. all.Where(r => r.At > newest - Window).Select(r => ((r.At - newest) / Duration.FromDays(7), r.Celsius))];
        if (recent.Max(r => r.Weeks) - recent.Min(r => r.Weeks) < LeastSpan / Duration.FromDays(7))
        {
            return null;
        }

        var (weeks, celsius) = (recent.Average(r => r.Weeks), recent.Average(r => r.Celsius));
        return recent.Sum(r => (r.Weeks - weeks) * (r.Celsius - celsius)) / recent.Sum(r => (r.Weeks - weeks) * (r.Weeks - weeks));
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return (values[(values.Length - 1) / 2] + values[values.Length / 2]) / 2;
    }
}
