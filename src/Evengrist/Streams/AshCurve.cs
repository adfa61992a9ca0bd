namespace Evengrist.Streams;

/// <summary>Streams from the least ash to the most, added up one after another. Page: docs/model/streams.md.</summary>
public sealed class AshCurve
{
    private AshCurve(IReadOnlyList<AshPoint> points) => Points = points;

    /// <summary>The streams in the order of their ash, of like ash the larger first, each with the sum up to and with it.</summary>
    public IReadOnlyList<AshPoint> Points { get; }

    /// <summary>All streams together.</summary>
    public StreamSum Straight => Points[^1].Together;

    /// <summary>The curve of a table.</summary>
    /// <exception cref="ArgumentException">The table has faults: see <see cref="StreamTable.Faults"/>.</exception>
    public static AshCurve Of(StreamTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (table.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(table));
        }

        MillStream[] ordered = [.. table.Streams.OrderBy(s => s.AshPercent).ThenByDescending(s => s.Yield).ThenBy(s => s.Code, StringComparer.Ordinal)];
        StreamSum[] sums = [.. ordered.Select((_, i) => StreamSum.Of(ordered.Take(i + 1)))];
        return new AshCurve([.. ordered.Zip(sums, (stream, sum) => new AshPoint(stream, sum, sum.Yield / sums[^1].Yield))]);
    }

    /// <summary>How far along the curve flour keeps an ash: f·y = (t·Y − Q)/(a − t) of the stream that has to be divided, Y and Q yield and ash before it, a its ash.</summary>
    /// <param name="ashPercent">The ash, on the table's basis.</param>
    /// <returns>Where it is cut; null where even the first stream has more ash.</returns>
    public AshCut? At(double ashPercent)
    {
        var (yield, ash) = (0.0, 0.0);
        List<(MillStream, double)> parts = [];
        foreach (var (stream, _, _) in Points)
        {
            var (with, of) = (yield + stream.Yield, ash + (stream.Yield * stream.AshPercent));
            // A stream of no more ash than is wanted never has to be divided, whatever the rounding of the sums says.
            if (stream.AshPercent > ashPercent && of > ashPercent * with)
            {
                var amount = ((ashPercent * yield) - ash) / (stream.AshPercent - ashPercent);
                return parts.Count == 0 ? null : new AshCut(ashPercent, stream, amount, StreamSum.Of([.. parts, (stream, amount / stream.Yield)]));
            }

            parts.Add((stream, 1));
            (yield, ash) = (with, of);
        }

        return new AshCut(ashPercent, null, 0, Straight);
    }
}
