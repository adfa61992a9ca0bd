using Evengrist.Intake;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A truck in the yard.</summary>
/// <param name="Truck">The place: code = ticket, name = plate, material = class.</param>
/// <param name="State">Where it stands.</param>
/// <param name="From">Code of the field or elevator; empty where it is not known.</param>
/// <param name="Way">Pit and leg it was sent by; empty where it was sent nowhere yet.</param>
/// <param name="At">The moment looked at.</param>
public sealed record YardTruck(Place Truck, TruckState State, string From, string Way, Instant At)
{
    /// <summary>Whole minutes in its present state.</summary>
    public int MinutesHere => (int)(At - State.Since).TotalMinutes;

    /// <summary>Whole minutes since it came.</summary>
    public int MinutesInAll => (int)(At - State.Came).TotalMinutes;
}
