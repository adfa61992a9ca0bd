using Evengrist.Ledger;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Records.Tempering;

/// <summary>A named person records what was done at a temper bin: filling or drawing begun or ended, water set. It moves no grain and starts nothing.</summary>
/// <param name="Key">The source's own key, so that the same entry sent twice is one.</param>
/// <param name="Bin">Code of the temper bin.</param>
/// <param name="Entry">What was done.</param>
/// <param name="At">When.</param>
/// <param name="Why">In the person's words; may be empty.</param>
public sealed record EnterTemper(string Key, string Bin, TemperEntry Entry, Instant At, string Why = "")
{
    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">There is no such temper bin, a figure cannot be, something is begun twice or ended unbegun, or it lies in the future; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var place = view.Book.Named(Bin);
                Demand(place.Kind == PlaceKind.TemperBin, "what is done at a temper bin is recorded on a temper bin.");
                Demand(Entry.Faults() is { Count: 0 }, string.Join(" ", Entry.Faults()));
                DemandTurn(view.Book, place);
                return [new Happen(Key, place.Code, At, HappeningKind.Tempered, Entry.Text(Why))];
            },
            by, "tempering", recorded);
    }

    // The same entry sent twice is no fault: the ledger knows it by its key.
    private void DemandTurn(Book book, Place place)
    {
        var run = TemperRun.Of(book, place.Id, At);
        var isSent = book.HappeningsOn(place.Id).Any(h => h.At == At && h.Kind == HappeningKind.Tempered && TemperEntry.Of(h) == Entry);
        Demand(isSent || run.Next.Contains(Entry.Act), Entry.Act switch
        {
            TemperAct.FillingBegun or TemperAct.DrawingBegun => $"{Entry.Act.Words()} is recorded already, {(Entry.Act == TemperAct.FillingBegun ? run.FillingSince : run.DrawingSince)}. Record its end first, or set the water.",
            _ => $"{Entry.Act.Words()} is recorded where it had begun; no beginning is recorded before that moment. Record the beginning first. Is it the right bin, and the right time?",
        });
    }

    private void Demand(bool holds, string otherwise)
    {
        if (!holds)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Bin}: {otherwise}") { Place = Bin, At = At };
        }
    }
}
