using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Plant.Answers;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Api;

/// <summary>A reading on a truck as reported; one standard uncertainty in the unit of the value.</summary>
public sealed record TicketReadingAnswer(string What, decimal Value, string Unit, string? Basis, decimal? StandardUncertainty, string Method, string Instrument)
{
    internal static TicketReadingAnswer Of(Reading reading) => new(
        reading.What.Words(), reading.Value, reading.Unit, reading.Basis.IsStated ? reading.Basis.ToString() : null, reading.StandardUncertainty, reading.Method, reading.Instrument);
}

/// <summary>A stage of a truck and when it was reached.</summary>
public sealed record StageAnswer(string Stage, DateTimeOffset At)
{
    internal static StageAnswer Of(StageReached reached) => new(TruckState.WordsOf(reached.Stage), reached.At.ToDateTimeOffset());
}

/// <summary>A truckload. Newest is the number of its newest fact: give it as seen with the next change. Net is kilograms as weighed; the settlement is null where there is none, and whyNotSettled says why.</summary>
public sealed record TicketAnswer(
    string Ticket, DateTimeOffset At, string Plate, string? From, string? Farm, string Class, decimal NetKg, string? Bin, bool OnHold, string? Contract,
    IReadOnlyList<TicketReadingAnswer> Readings, SettlementAnswer? Settlement, IReadOnlyList<string> WhyNotSettled, IReadOnlyList<string> Notes,
    string State, IReadOnlyList<StageAnswer> Reached, long Newest, IReadOnlyList<string> NotForSettlement)
{
    internal static TicketAnswer Of(TruckSight truck) => new(
        truck.Truck.Code, truck.At.ToDateTimeOffset(), truck.Truck.Name, truck.Source?.Code, truck.Source?.Of, truck.Truck.Material, truck.Net.Kilograms, truck.Bin?.Code, truck.Hold is not null,
        truck.Terms?.Title ?? truck.Contract?.Text, [.. truck.Readings.Select(TicketReadingAnswer.Of)], truck.Settled is { } settled ? SettlementAnswer.Of(settled) : null, truck.WhyNot, [.. truck.Notes.Select(n => n.Text)],
        truck.State.Words, [.. truck.State.Reached.Select(StageAnswer.Of)], truck.Newest.Value, truck.NotForSettlement);
}
