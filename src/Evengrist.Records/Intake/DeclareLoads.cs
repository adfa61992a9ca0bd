using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>What the driver declares of the trailer: its last loads and how it was cleaned.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Key">The sender's own key within the ticket: the same key again is the same declaration.</param>
/// <param name="Trailer">What is declared.</param>
public sealed record DeclareLoads(string Ticket, string Key, TrailerHistory Trailer)
{
    /// <summary>When; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">It cannot be, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var truck = OnTicket.Truck(view.Book, Ticket);
                if (Trailer.Faults() is { Count: > 0 } faults)
                {
                    throw OnTicket.Refusal(truck, "was not given what the driver declares. " + string.Join(" ", faults));
                }

                return [OnTicket.Said(view.Book, truck, $"declared {Key}", HappeningKind.Declared, Trailer.ToText(), At, now)];
            },
            by, OnTicket.Source, provided: SeenTicket.Unchanged(Ticket, Seen));
    }
}
