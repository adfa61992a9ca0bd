using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Lots of packages, each milling day looked through once.</summary>
internal sealed class LotsByDay(Book book, FlourLots lots)
{
    private readonly Dictionary<LocalDate, Dictionary<PlaceId, FlourLot>> days = [];

    /// <summary>The lot that a package belongs to; null where it belongs to none.</summary>
    public FlourLot? Of(Place package, Instant packedAt)
    {
        var day = MillingDay.Of(packedAt, lots.Zone, lots.DayStart);
        if (!days.TryGetValue(day, out var there))
        {
            days.Add(day, there = lots.Of(book, day, day).SelectMany(l => l.Packages.Select(p => (p.Place.Id, Lot: l))).ToDictionary(p => p.Id, p => p.Lot));
        }

        return there.GetValueOrDefault(package.Id);
    }
}
