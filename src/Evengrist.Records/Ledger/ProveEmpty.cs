using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Ledger;

/// <summary>A named person has seen that a place is empty: what the ledger still holds there is booked to a shortage (or a gain), and the chain of origin is cut.</summary>
/// <param name="Place">Code of the place.</param>
/// <param name="At">When it was seen empty.</param>
/// <param name="Words">How it was seen: swept, looked into by lamp; may be empty.</param>
public sealed record ProveEmpty(string Place, Instant At, string Words = "")
{
    private const string Source = "ledger";

    /// <summary>Records the difference, if there is one, and that the place was empty.</summary>
    /// <returns>What the ledger held, and the receipt.</returns>
    /// <exception cref="LedgerRefusal">There is no such place, or more was taken from it later than would be left.</exception>
    public (Mass Difference, Receipt Receipt) In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var difference = Mass.Zero;
        var receipt = mill.Record(
            view =>
            {
                var place = view.Book.Named(Place);
                difference = view.Book.StockOf(place.Id, At);
                return [.. StockDifference.Drafts(view.Book, place, difference, At, $"{place.Code} was seen empty"), new Happen($"{place.Code} empty {At.ToMicros()}", place.Code, At, HappeningKind.ProvenEmpty, Words)];
            },
            by, Source, recorded);
        return (difference, receipt);
    }
}
