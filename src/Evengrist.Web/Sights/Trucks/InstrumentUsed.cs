using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Which scale, meter or tester the next truck is likely read by: the one that read the last.</summary>
public static class InstrumentUsed
{
    /// <summary>Its name, as its certificate is kept under; empty where no truck says.</summary>
    public static string Last(Book book, Property what, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.OfKind(PlaceKind.Truck).Reverse().SelectMany(t => book.ReadingsOn(t.Id)).FirstOrDefault(r => r.What == what && r.At <= at && r.Instrument.Length > 0)?.Instrument ?? "";
    }
}
