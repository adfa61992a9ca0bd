using Evengrist.Ledger;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>Spans in which nothing was read or recorded where the suspect went: levels nobody took, loads nobody weighed, what a count found, what was flushed off a line.</summary>
/// <param name="book">The ledger.</param>
/// <param name="stays">Places of the plant it can have been in.</param>
/// <param name="trucks">Trucks it came in, and how much of it.</param>
internal sealed class Unread(Book book, IReadOnlyList<Stay> stays, IReadOnlyList<(Place Truck, double Grams)> trucks)
{
    // Between two soundings a bin is counted on for so long; a choice of ours.
    private static readonly Duration Long = Duration.FromDays(7);

    public IEnumerable<StillUnknown> All() => [.. Levels(), .. Weights(), .. Counted(), .. Flushed()];

    private IEnumerable<StillUnknown> Levels()
    {
        foreach (var stay in stays.Where(s => s.Place.Kind is PlaceKind.Bin or PlaceKind.TemperBin or PlaceKind.FlourBin).OrderByDescending(s => s.Most))
        {
            Instant[] taken = [.. book.ReadingsOn(stay.Place.Id).Where(r => r.What is Property.SoundedStock or Property.Ullage && r.At >= stay.From && r.At <= stay.Until).Select(r => r.At)];
            Instant[] marks = [stay.From, .. taken, stay.Until];
            var (from, until) = marks.Zip(marks.Skip(1)).MaxBy(s => s.Second - s.First);
            if (taken.Length == 0 || until - from > Long)
            {
                yield return new StillUnknown(UnknownKind.LevelNotRead, stay.Place, stay.Most, []) { From = from, Until = until };
            }
        }
    }

    private IEnumerable<StillUnknown> Weights() => trucks.Where(t => !HasReading(t.Truck, Property.GrossWeight) || !HasReading(t.Truck, Property.TareWeight))
        .OrderByDescending(t => t.Grams).Select(t => new StillUnknown(UnknownKind.WeightNotRead, t.Truck, t.Grams, []));

    private IEnumerable<StillUnknown> Counted()
    {
        var byPlace = stays.ToDictionary(s => s.Place.Id);
        return book.OfKind(PlaceKind.Gain).Concat(book.OfKind(PlaceKind.Shortage))
            .SelectMany(by => book.MovementsOf(by.Id).Select(i => book.Movements[i]).Where(m => m.Mass.Grams > 0).Select(m => (By: by, On: m.From == by.Id ? m.To : m.From, Movement: m)))
            .Where(c => byPlace.TryGetValue(c.On, out var stay) && c.Movement.At >= stay.From && c.Movement.At <= stay.Until)
            .GroupBy(c => c.On)
            .Select(g => new StillUnknown(UnknownKind.FoundByCount, book[g.Key], g.Sum(c => (double)c.Movement.Mass.Grams), [.. g.Select(c => c.By).DistinctBy(p => p.Id)]) { From = g.Min(c => c.Movement.At), Until = g.Max(c => c.Movement.At) })
            .OrderByDescending(u => u.Grams);
    }

    private IEnumerable<StillUnknown> Flushed()
    {
        foreach (var stay in stays.Where(s => s.Place.Kind == PlaceKind.PackingLine))
        {
            Movement[] gone = [.. book.MovementsOf(stay.Place.Id).Select(i => book.Movements[i])
                .Where(m => m.From == stay.Place.Id && book[m.To].Kind == PlaceKind.Waste && m.Mass.Grams > 0 && m.At >= stay.From && m.At <= stay.Until)];
            if (gone.Length > 0)
            {
                yield return new StillUnknown(UnknownKind.Flushed, stay.Place, gone.Sum(m => (double)m.Mass.Grams), [.. gone.Select(m => book[m.To]).DistinctBy(p => p.Id)]) { From = gone.Min(m => m.At), Until = gone.Max(m => m.Until) };
            }
        }
    }

    private bool HasReading(Place place, Property what) => book.ReadingsOn(place.Id).Any(r => r.What == what);
}
