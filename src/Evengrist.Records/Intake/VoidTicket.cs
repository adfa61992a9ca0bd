using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>Voids a ticket: it stays, says so, and its grain was never moved. What was paid for it stands and is to be got back.</summary>
/// <param name="Ticket">The ticket number.</param>
/// <param name="Reason">Why; demanded.</param>
/// <param name="At">When.</param>
public sealed record VoidTicket(string Ticket, string Reason, Instant At)
{
    private const string Source = "settlement";

    /// <summary>Records it: the fact, and for every movement of the load a correction to nothing, last one first.</summary>
    /// <exception cref="LedgerRefusal">There is no such ticket, it is void already, no reason is given, or its grain has gone on; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(view => [.. Drafts(view.Book)], by, Source, recorded);
    }

    private List<Draft> Drafts(Book book)
    {
        var truck = book.Named(Ticket);
        if (truck.Kind != PlaceKind.Truck)
        {
            throw new LedgerRefusal(LedgerRule.UnknownPlace, $"{truck.Code} is no ticket.") { Place = truck.Code };
        }

        if (book.HappeningsOn(truck.Id).FirstOrDefault(h => h.Kind == HappeningKind.Voided) is { } voided)
        {
            throw new LedgerRefusal(LedgerRule.BadCorrection, $"{truck.Code} is void already, since {voided.At}: {voided.Words}") { Place = truck.Code };
        }

        if (string.IsNullOrWhiteSpace(Reason))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{truck.Code}: say why it is voided; the reason is kept with it.") { Place = truck.Code };
        }

        var reason = Reason.ReplaceLineEndings(" ").Trim();
        return
        [
            new Happen($"{truck.Code}/void", truck.Code, At, HappeningKind.Voided, reason),
            .. LoadWay.Of(book, truck, Instant.MaxValue).Where(m => m.Mass > Mass.Zero).DistinctBy(m => m.Id).OrderByDescending(m => m.At).ThenByDescending(m => m.Id).Select(m =>
                new Move($"{truck.Code}/void {m.Id.Value}", book[m.From].Code, book[m.To].Code, Mass.Zero, m.At, m.Until) { Corrects = m.Id, Note = $"ticket voided: {reason}" }),
        ];
    }
}
