using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>One truckload as it stands at the moment looked at.</summary>
/// <param name="Truck">The place: code = ticket, name = plate, material = class.</param>
/// <param name="At">When it came.</param>
/// <param name="Net">What was on it: gross − tare, or what was booked where one of the two is missing.</param>
public sealed record TruckSight(Place Truck, Instant At, Mass Net)
{
    /// <summary>Where it stands between booking and payment.</summary>
    public required TruckState State { get; init; }

    /// <summary>Number of the newest fact of the ticket, whatever the moment looked at: a change says that it was seen.</summary>
    public FactId Newest { get; init; }

    /// <summary>What was said at the gate; null where the ticket was written at once.</summary>
    public Arrival? Arrival { get; init; }

    /// <summary>The field or elevator; null where none is booked.</summary>
    public Place? Source { get; init; }

    /// <summary>The bin it was tipped into; null while it is not tipped, or where the way is not clear.</summary>
    public Place? Bin { get; init; }

    /// <summary>Movements of the load, by time: from the field into the bin.</summary>
    public IReadOnlyList<MovementLine> Way { get; init; } = [];

    /// <summary>The newest reading of each property.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>The contract named on the ticket; null where none is.</summary>
    public Happening? Contract { get; init; }

    /// <summary>The terms of that contract; null where the shelf has none of that name.</summary>
    public ContractTerms? Terms { get; init; }

    /// <summary>What comes of settling it; null where no contract with terms is named.</summary>
    public SettlementOutcome? Outcome { get; init; }

    /// <summary>The open hold.</summary>
    public Happening? Hold { get; init; }

    /// <summary>Notes, by time.</summary>
    public IReadOnlyList<Happening> Notes { get; init; } = [];

    /// <summary>Whether the ticket was voided, or every movement of its load was.</summary>
    public bool IsVoid => State.Stage == TruckStage.Voided || (Way.Count > 0 && Way.All(m => m.Mass == Mass.Zero));

    /// <summary>Why nobody may be paid on the scales and meters it was read on, each a sentence; empty where one may.</summary>
    public IReadOnlyList<string> NotForSettlement { get; init; } = [];

    /// <summary>The settlement; null where there is none.</summary>
    public Settlement? Settled => Outcome as Settlement;

    /// <summary>Why it is not settled, each a sentence; empty where it is.</summary>
    public IReadOnlyList<string> WhyNot => Outcome switch
    {
        Settlement => [],
        NotSettled not => not.Reasons,
        _ when Contract is { } named => [$"The ticket names contract {named.Text}, and the shelf has no such terms. Keep them, or name another contract by putting the ticket right."],
        _ => ["No contract is named on the ticket."],
    };

    /// <summary>The newest reading of a property; null where there is none.</summary>
    public Reading? Read(Property what) => Readings.FirstOrDefault(r => r.What == what);
}
