using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Streams.Additions;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>A stock of one material in one kind of place.</summary>
/// <param name="Kind">The kind of place.</param>
/// <param name="Material">The class or flour; empty where none was said.</param>
/// <param name="Stock">How much in all.</param>
/// <param name="Places">In how many places.</param>
public sealed record Holding(PlaceKind Kind, string Material, Mass Stock, int Places);

/// <summary>Something that waits for a person.</summary>
/// <param name="Kind">How pressing.</param>
/// <param name="Place">Where; null where it is at no place of the ledger, and then a link says what it is.</param>
/// <param name="Text">What.</param>
/// <param name="At">Since when; null where it has no beginning.</param>
public sealed record Waiting(Face.StateKind Kind, Place? Place, string Text, Instant? At)
{
    /// <summary>Where it leads; null where it leads to its place.</summary>
    public WaitingLink? Link { get; init; }
}

/// <summary>Where something that waits leads.</summary>
/// <param name="Address">The page.</param>
/// <param name="Word">What it is called.</param>
public sealed record WaitingLink(string Address, string Word);

/// <summary>What the mill holds and does at one moment, and what needs a person.</summary>
public sealed record TodaySight(
    IReadOnlyList<Holding> Holdings, IReadOnlyList<MovementLine> UnderWay, IReadOnlyList<Waiting> Waiting, IReadOnlyList<MovementLine> Last, bool IsEmpty)
{
    private const int LastShown = 8;
    private const int NotesForDays = 3;
    private const int AdditiveDays = 3;
    private const double NearlyFull = 0.95;
    private const double NearlyEmpty = 0.05;
    private static readonly PlaceKind[] Held = [PlaceKind.Truck, PlaceKind.Bin, PlaceKind.TemperBin, PlaceKind.FlourBin, PlaceKind.Pallet, PlaceKind.BulkLoad, PlaceKind.ReworkTote];

    // What flows on from a junction to a junction says nothing that its beginning and end do not.
    private static readonly PlaceKind[] Told = [PlaceKind.Water, PlaceKind.Truck, PlaceKind.Bin, PlaceKind.TemperBin, PlaceKind.MillUnit, PlaceKind.FlourBin, PlaceKind.PackingLine];

    /// <summary>Looks at the whole mill.</summary>
    public static TodaySight Of(Book book, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        var stocks = Held.SelectMany(book.OfKind).Select(p => (Place: p, Stock: book.StockOf(p.Id, at))).ToArray();
        var (flowing, last) = Moves(book, at);
        return new TodaySight(
            [.. Holds(stocks)],
            [.. flowing.Where(m => Told.Contains(book[m.From].Kind)).OrderBy(m => book[m.From].Kind).ThenBy(m => m.At).Select(m => MovementLine.Of(book, m))],
            [.. Waits(book, stocks, at)],
            [.. last.Select(m => MovementLine.Of(book, m))],
            book.Places.Count == 0);
    }

    // One pass over all movements: those under way, and the last begun, newest first.
    private static (List<Movement> Flowing, IEnumerable<Movement> Last) Moves(Book book, Instant at)
    {
        var flowing = new List<Movement>();
        var newest = new PriorityQueue<Movement, (Instant, FactId)>();
        for (var i = 0; i < book.Movements.Count; i++)
        {
            var movement = book.Movements[i];
            if (movement.At > at || !book.Counts(i))
            {
                continue;
            }

            if (movement.Until > at)
            {
                flowing.Add(movement);
            }

            newest.Enqueue(movement, (movement.At, movement.Id));
            if (newest.Count > LastShown)
            {
                newest.Dequeue();
            }
        }

        return (flowing, newest.UnorderedItems.OrderByDescending(m => m.Priority).Select(m => m.Element));
    }

    private static IEnumerable<Holding> Holds((Place Place, Mass Stock)[] stocks) => stocks
        .Where(s => s.Stock > Mass.Zero)
        .GroupBy(s => (s.Place.Kind, s.Place.Material))
        .Select(g => new Holding(g.Key.Kind, g.Key.Material, Mass.FromGrams(g.Sum(s => s.Stock.Grams)), g.Count()))
        .OrderBy(h => h.Kind).ThenBy(h => h.Material, StringComparer.Ordinal);

    private static string StopWords(FeederStop stop, Instant at) => string.Create(CultureInfo.InvariantCulture,
        $"{(stop.Until == at ? "gets no" : "got no")} {stop.Additive}: {stop.Flour.Tonnes:0.00} t of flour ran without in {(stop.Until - stop.From).TotalMinutes:0} min. Look at the feeder, and hold its lots until a named person has decided");

    private static IEnumerable<Waiting> Waits(Book book, (Place Place, Mass Stock)[] stocks, Instant at)
    {
        foreach (var place in book.Happenings.Where(h => h.Kind == HappeningKind.Held && h.At <= at).Select(h => h.On).Distinct())
        {
            if (book.HoldOn(place, at) is { } hold)
            {
                yield return new Waiting(Face.StateKind.Hold, book[place], hold.Text, hold.At);
            }
        }

        foreach (var place in book.Happenings.Where(h => h.Kind is HappeningKind.PersonInside or HappeningKind.UnderGas or HappeningKind.State && h.At <= at).Select(h => h.On).Distinct())
        {
            if (book.BarsOn(place, at) is { Gravest: { } bar } bars && (bars.PersonInside ?? bars.UnderGas) == bar)
            {
                yield return new Waiting(Face.StateKind.Stop, book[place], $"{(bars.PersonInside is null ? "under gas" : "person inside")}: {bar.Words}", bar.At);
            }
        }

        foreach (var stop in FeederWatch.Stops(book, at - Duration.FromDays(1), at))
        {
            yield return new Waiting(stop.Until == at ? Face.StateKind.Stop : Face.StateKind.Watch, stop.To, StopWords(stop, at), stop.From);
        }

        foreach (var additive in AdditiveStock.Of(book, at).Where(a => a.LastsUntil < at + Duration.FromDays(AdditiveDays)))
        {
            yield return new Waiting(Face.StateKind.Watch, additive.Lots[^1].Lot, string.Create(CultureInfo.InvariantCulture, $"{additive.Additive} lasts {(additive.LastsUntil!.Value - at).TotalDays:0.0} days more, {additive.LeftKilograms:0} kg"), null);
        }

        foreach (var note in book.Happenings.Where(h => h.Kind == HappeningKind.Note && h.At <= at && h.At > at - Duration.FromDays(NotesForDays) && book.Counts(h)).OrderByDescending(h => h.At))
        {
            yield return new Waiting(Face.StateKind.Watch, book[note.On], note.Text, note.At);
        }

        foreach (var (place, stock) in stocks.Where(s => s.Place.Kind is PlaceKind.Bin or PlaceKind.FlourBin && s.Place.Capacity is not null && s.Stock > Mass.Zero))
        {
            var fill = (double)stock.Grams / place.Capacity!.Value.Grams;
            if (fill > NearlyFull || (fill < NearlyEmpty && place.Kind == PlaceKind.Bin))
            {
                yield return new Waiting(Face.StateKind.Watch, place, string.Create(CultureInfo.InvariantCulture, $"{(fill > NearlyFull ? "nearly full" : "nearly empty")}, {100 * fill:0} % of its capacity"), null);
            }
        }
    }
}
