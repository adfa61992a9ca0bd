using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>A named person books what a sounding found more, or less, than the ledger held: to a gain or a shortage, with a note.</summary>
/// <param name="Bin">Code of the bin.</param>
/// <param name="At">The moment of the sounding.</param>
/// <param name="Found">What the sounding says lay there; at least zero.</param>
/// <param name="Reason">Why it is booked, in the recorder's words; demanded.</param>
public sealed record CorrectStock(string Bin, Instant At, Mass Found, string Reason)
{
    /// <summary>The source's own key of the difference, so that the same entry sent twice is one; null where the bin and the moment are key enough.</summary>
    public string? Key { get; init; }

    /// <summary>What is recorded in the same breath: the sounding that found it. All of it is taken, or nothing.</summary>
    public IReadOnlyList<Draft> Beside { get; init; } = [];

    /// <summary>Records the difference; nothing where there is none.</summary>
    /// <returns>What was found more (positive) or less (negative) than the ledger held, and the receipt.</returns>
    /// <exception cref="LedgerRefusal">There is no such bin, no reason is given, the bin is barred at that moment, or more was taken from it later than would be left.</exception>
    public (Mass Difference, Receipt Receipt) In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var difference = Mass.Zero;
        var receipt = mill.Record(
            view =>
            {
                var place = view.Book.Named(Bin);
                Demand(place.Kind.IsBin(), $"{place.Code} is no bin.");
                Demand(!string.IsNullOrWhiteSpace(Reason), "Say why the difference is booked.");
                Demand(Found >= Mass.Zero, "A stock is at least zero.");
                difference = Found - view.Book.StockOf(place.Id, At);
                return [.. StockDifference.Drafts(view.Book, place, -difference, At, Reason, Key), .. Beside];
            },
            by, "bin page", recorded);
        return (difference, receipt);
    }

    private void Demand(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, otherwise) { Place = Bin };
        }
    }
}
