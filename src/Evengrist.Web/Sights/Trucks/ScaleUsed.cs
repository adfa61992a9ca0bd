using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Which scale the next truck is likely weighed on: the one that weighed the last.</summary>
public static class ScaleUsed
{
    /// <summary>Its name, as its certificate is kept under; empty where no truck says.</summary>
    public static string Last(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.OfKind(PlaceKind.Truck).Reverse().SelectMany(t => book.ReadingsOn(t.Id)).FirstOrDefault(r => r.What == Property.GrossWeight && r.At <= at && r.Instrument.Length > 0)?.Instrument ?? "";
    }
}
