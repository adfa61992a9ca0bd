using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>CO₂ in the air of a bin: the newest reading against what was usual in the four weeks before it. A trend; it releases nothing.</summary>
/// <param name="At">When it was last read.</param>
/// <param name="Ppm">The newest reading, ppm by volume.</param>
/// <param name="UsualPpm">Median of the four weeks before, ppm; null where nothing was read then.</param>
public sealed record CarbonDioxideTrend(Instant At, double Ppm, double? UsualPpm)
{
    /// <summary>So many times the usual is a rise to look into. Ours.</summary>
    public const double RiseFactor = 1.5;

    private static readonly Duration Before = Duration.FromDays(28);

    /// <summary>Whether it has risen so far that somebody is to look.</summary>
    public bool IsRising => Ppm > RiseFactor * UsualPpm;

    /// <summary>The trend of a bin up to a moment; null where CO₂ was never read.</summary>
    public static CarbonDioxideTrend? Of(Book book, PlaceId bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        Reading[] read = [.. book.ReadingsOn(bin).Where(r => r.What == Property.CarbonDioxide && r.At <= at)];
        if (read.Length == 0)
        {
            return null;
        }

        double[] earlier = [.. read[..^1].Where(r => r.At >= read[^1].At - Before).Select(r => (double)r.Value).Order()];
        return new CarbonDioxideTrend(read[^1].At, (double)read[^1].Value, earlier.Length == 0 ? null : (earlier[(earlier.Length - 1) / 2] + earlier[earlier.Length / 2]) / 2);
    }
}
