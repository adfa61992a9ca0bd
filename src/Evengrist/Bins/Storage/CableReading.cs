using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>A temperature read at a point of a cable.</summary>
/// <param name="Point">Where.</param>
/// <param name="At">When.</param>
/// <param name="Celsius">°C.</param>
public sealed record CableReading(CablePoint Point, Instant At, double Celsius)
{
    /// <summary>The temperatures read on a bin's cables up to a moment, by time; readings whose instrument names no point of a cable are left to others.</summary>
    public static IReadOnlyList<CableReading> Of(Book book, PlaceId bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return [.. book.ReadingsOn(bin).Where(r => r.What == Property.Temperature && r.At <= at)
            .Select(r => (Reading: r, Point: CablePoint.Parse(r.Instrument))).Where(r => r.Point is not null)
            .Select(r => new CableReading(r.Point!, r.Reading.At, (double)r.Reading.Value))];
    }
}
