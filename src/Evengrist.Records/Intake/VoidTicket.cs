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
    private const int MostSteps = 6;

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
            .. Way(book, truck).OrderByDescending(m => m.At).ThenByDescending(m => m.Id).Select(m =>
                new Move($"{truck.Code}/void {m.Id.Value}", book[m.From].Code, book[m.To].Code, Mass.Zero, m.At, m.Until) { Corrects = m.Id, Note = $"ticket voided: {reason}" }),
        ];
    }

    // A pit and a leg hold nothing, so a load goes on through them in the same grams at the same time.
    private static List<Movement> Way(Book book, Place truck)
    {
        var way = new List<Movement>();
        foreach (var movement in book.MovementsOf(truck.Id).Select(i => book.Movements[i]).Where(m => m.Mass > Mass.Zero))
        {
            Movement? next = movement;
            for (var steps = 0; next is { } step && steps < MostSteps; steps++)
            {
                way.Add(step);
                next = step.To != truck.Id && book[step.To].Kind is PlaceKind.Pit or PlaceKind.Leg ? Onward(book, step, way) : null;
            }
        }

        return way;
    }

    private static Movement? Onward(Book book, Movement step, List<Movement> taken) => book.MovementsOf(step.To).Select(i => book.Movements[i])
        .Where(m => m.From == step.To && m.At == step.At && m.Until == step.Until && m.Mass == step.Mass && !taken.Contains(m)).Select(m => (Movement?)m).FirstOrDefault();
}
