using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>Pays for tickets: an advance where a rule is given, the final settlement or the difference after it otherwise. All of them or none.</summary>
/// <param name="Tickets">Ticket numbers.</param>
/// <param name="Advance">How the advance is reckoned; null for the final settlement.</param>
/// <param name="At">When it is paid.</param>
public sealed record PayTickets(IReadOnlyList<string> Tickets, AdvanceRule? Advance, Instant At)
{
    private const string Source = "settlement";

    /// <summary>Records the payments.</summary>
    /// <returns>Each ticket with its payment.</returns>
    /// <exception cref="LedgerRefusal">A ticket is not there or may not be paid for; nothing was recorded.</exception>
    public IReadOnlyList<(string Ticket, Payment Payment)> In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        var shelf = TradeShelf.Of(mill);
        var paid = new List<(string, Payment)>();
        mill.Record(
            view =>
            {
                var reader = shelf.Reader(view, At);
                paid.AddRange(Tickets.Select(t => (t, Payment(view.Book, reader, t, by))));
                return [.. paid.Select(p => Draft(view.Book, p.Item1, p.Item2))];
            },
            by, Source, recorded);
        return paid;
    }

    private Payment Payment(Book book, LoadReader reader, string ticket, string by)
    {
        if (book.Find(ticket) is not { Kind: PlaceKind.Truck } truck || reader.Look(truck) is not { } load)
        {
            throw new LedgerRefusal(LedgerRule.UnknownPlace, $"There is no ticket \"{ticket}\" by then.") { Place = ticket };
        }

        if (book.HappeningsOn(truck.Id).FirstOrDefault(h => h.Kind is HappeningKind.Settled or HappeningKind.Voided && h.At > At) is { } later)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{truck.Code}: something is recorded after {At}, on {later.At}: {later.Words}. Pay as of a later moment.") { Place = truck.Code, At = later.At };
        }

        var account = PaymentAccount.Of(load);
        return (Advance is null ? PaymentModel.Settle(account, by) : PaymentModel.Advance(account, Advance, by)) switch
        {
            ToPay pay => pay.Payment,
            NotPaid not => throw new LedgerRefusal(LedgerRule.Malformed, $"{truck.Code}: {string.Join(" ", not.Reasons)}") { Place = truck.Code },
            var other => throw new InvalidOperationException($"A payment ended as {other.GetType().Name}."),
        };
    }

    // Numbered by the payments that are there, so that two people who pay at once cannot both be taken.
    private Happen Draft(Book book, string ticket, Payment payment)
    {
        var truck = book.Named(ticket);
        var before = book.HappeningsOn(truck.Id).Count(h => h.Kind == HappeningKind.Settled);
        return new Happen($"{truck.Code}/payment {before + 1}", truck.Code, At, HappeningKind.Settled, payment.ToText());
    }
}
