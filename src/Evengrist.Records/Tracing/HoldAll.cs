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
        var (held, already, gone) = (new List<string>(), new List<string>(), new List<GoneToCustomer>());
        var receipt = mill.Record(
            view =>
            {
                foreach (var place in Places.Select(view.Book.Named).DistinctBy(p => p.Id))
                {
                    var left = Gone(view.Book, place).ToList();
                    gone.AddRange(left);
                    if (left.Count == 0 || view.Book.StockOf(place.Id, At) > Mass.Zero)
                    {
                        (view.Book.HoldOn(place.Id, At) is null ? held : already).Add(place.Code);
                    }
                }

                return held.ConvertAll(code => (Draft)new Happen($"{code} held {At.ToMicros()}", code, At, HappeningKind.Held, Reason));
            },
            by, "tracing", recorded);
        return new HoldOutcome(held, already, gone, receipt);
    }

    private IEnumerable<GoneToCustomer> Gone(Book book, Place place) =>
        from index in book.MovementsOf(place.Id)
        let movement = book.Movements[index]
        where movement.From == place.Id && movement.At <= At && movement.Mass > Mass.Zero && book[movement.To].Kind == PlaceKind.Customer
        select new GoneToCustomer(place.Code, book[movement.To].Code, movement.Mass, movement.At);
}
