using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Tracing;

/// <summary>Puts places on hold, all in one batch: nothing may leave them until a named person releases them.</summary>
/// <param name="Places">Their codes.</param>
/// <param name="Reason">Why; demanded.</param>
/// <param name="At">From when on.</param>
public sealed record HoldAll(IReadOnlyList<string> Places, string Reason, Instant At)
{
    /// <summary>Holds what is still here. What has gone to a customer cannot be held and is named, so that the customer can be told.</summary>
    /// <exception cref="LedgerRefusal">A code names no place, or no reason is given; nothing was held.</exception>
    public HoldOutcome In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (held, already, holds) = (new List<string>(), new List<string>(), new List<Draft>());
        var (gone, since) = (new List<GoneToCustomer>(), new List<GoneToCustomer>());
        var receipt = mill.Record(
            view =>
            {
                foreach (var place in Places.Select(view.Book.Named).DistinctBy(p => p.Id))
                {
                    var left = Gone(view.Book, place).ToLookup(g => g.At <= At);
                    gone.AddRange(left[true]);
                    since.AddRange(left[false]);
                    if (!left[true].Any() || view.Book.StockOf(place.Id, At) > Mass.Zero)
                    {
                        Instant[] from = [.. Beginnings(view.Book, place.Id)];
                        (from.Length > 0 ? held : already).Add(place.Code);
                        holds.AddRange(from.Select(at => new Happen($"{place.Code} held {at.ToMicros()}", place.Code, at, HappeningKind.Held, Reason)));
                    }
                }

                return holds;
            },
            by, "tracing", recorded);
        return new HoldOutcome(held, already, gone, receipt) { LeftSince = since };
    }

    // From the moment asked on; and again from where somebody released an earlier hold after it, or that release would free what is held now.
    private IEnumerable<Instant> Beginnings(Book book, PlaceId place)
    {
        if (book.HoldOn(place, At) is null)
        {
            yield return At;
        }

        if (book.HoldOn(place, Instant.MaxValue) is null && book.HappeningsOn(place).LastOrDefault(h => h.Kind == HappeningKind.Released && h.At > At) is { } released)
        {
            yield return released.At;
        }
    }

    private static IEnumerable<GoneToCustomer> Gone(Book book, Place place) =>
        from index in book.MovementsOf(place.Id)
        let movement = book.Movements[index]
        where movement.From == place.Id && movement.Mass > Mass.Zero && book[movement.To].Kind == PlaceKind.Customer
        select new GoneToCustomer(place.Code, book[movement.To].Code, movement.Mass, movement.At);
}
