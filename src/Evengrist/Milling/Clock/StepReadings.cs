using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Milling.Clock;

/// <summary>Readings of what passes a place about a change, in hours of running.</summary>
public static class StepReadings
{
    /// <summary>Reads them. Where a reading says no uncertainty, all take what one differs from the next by: √(mean of the squared differences / 2).</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="place">Where they were taken.</param>
    /// <param name="what">The property.</param>
    /// <param name="running">Hours of running since the change.</param>
    /// <param name="from">First moment that counts.</param>
    /// <param name="until">Last moment, left out.</param>
    public static IReadOnlyList<StepPoint> Of(Book book, PlaceId place, Property what, RunningTime running, Instant from, Instant until)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(running);
        // A property that needs a basis is read on one and the same here, or what differs is the basis.
        var all = book.ReadingsOn(place).Where(r => r.What == what && r.At >= from && r.At < until).ToArray();
        Reading[] alike = [.. all.GroupBy(r => (r.Unit, r.Basis)).OrderByDescending(g => g.Count()).FirstOrDefault() ?? Enumerable.Empty<Reading>()];
        var usual = alike.All(r => r.StandardUncertainty > 0) || alike.Length < 3 ? 0 : Math.Sqrt(alike.Zip(alike.Skip(1), (a, b) => Math.Pow((double)(b.Value - a.Value), 2)).Average() / 2);
        return [.. alike.Select(r => new StepPoint(running.At(r.At), (double)r.Value, usual > 0 ? usual : (double?)r.StandardUncertainty ?? 0))];
    }
}
