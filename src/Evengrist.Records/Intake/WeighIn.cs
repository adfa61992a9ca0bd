using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A truck at the gate is weighed full.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Gross">Weight full.</param>
public sealed record WeighIn(string Ticket, Mass Gross)
{
    /// <summary>Which scale, by the name its certificate is kept under; empty where it is not said.</summary>
    public string Scale { get; init; } = "";

    /// <summary>When; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records the weight. The same weight sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">The weight cannot be, another one is recorded, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var truck = OnTicket.Truck(view.Book, Ticket);
                if (Gross <= Mass.Zero || Gross > Weighing.Most)
                {
                    throw OnTicket.Refusal(truck, $"cannot weigh {Gross} full. Is the unit right (kg, not lb or g)?");
                }

                var there = OnTicket.Read(view.Book, truck, Property.GrossWeight);
                return there is not null && there.Value != Gross.Kilograms
                    ? throw OnTicket.Refusal(truck, $"was weighed full at {there.Value} kg already. If that is wrong, put it right instead.")
                    : [OnTicket.Weight(truck.Code, "gross", Property.GrossWeight, Gross, OnTicket.When(there, Gross.Kilograms, At, now), there?.Instrument ?? Scale)];
            },
            by, OnTicket.Source, provided: SeenTicket.Unchanged(Ticket, Seen));
    }
}
