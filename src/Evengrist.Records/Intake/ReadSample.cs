using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>What the sample of a truck showed; may come in several parts, as tests are done.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Key">The sender's own key of these readings within the ticket: the same key again is the same readings.</param>
/// <param name="At">When the sample was taken.</param>
/// <param name="Readings">At least one.</param>
public sealed record ReadSample(string Ticket, string Key, Instant At, IReadOnlyList<TruckReading> Readings)
{
    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records the readings. The same ones sent again are not recorded again.</summary>
    /// <exception cref="LedgerRefusal">A reading cannot be, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var truck = OnTicket.Truck(view.Book, Ticket);
                return Readings.Count == 0 || string.IsNullOrWhiteSpace(Key)
                    ? throw OnTicket.Refusal(truck, "was given no reading, or no key for them. Type at least one.")
                    : [.. Readings.Select(r => new Measure($"{truck.Code}/read {Key} {r.What}", truck.Code, At, r.What, r.Value, r.Unit, r.Basis, r.Method, r.Instrument, r.StandardUncertainty))];
            },
            by, OnTicket.Source, provided: SeenTicket.Unchanged(Ticket, Seen));
    }
}
