using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>One truckload as facts and papers tell of it at a moment.</summary>
/// <param name="Truck">The place: code = ticket, name = plate, material = class.</param>
/// <param name="At">When it came.</param>
public sealed record LoadFacts(Place Truck, Instant At)
{
    /// <summary>The milling day it came on.</summary>
    public required LocalDate Day { get; init; }

    /// <summary>The day of the site's calendar it came on.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>The field or elevator; null where none is booked.</summary>
    public Place? Source { get; init; }

    /// <summary>The sheet of the field for that day; null where there is none.</summary>
    public FieldSheet? Field { get; init; }

    /// <summary>The party it was bought from; null where no paper names it.</summary>
    public Party? Grower { get; init; }

    /// <summary>The party that hauled it; null where no paper names it.</summary>
    public Party? Carrier { get; init; }

    /// <summary>The newest reading of each property, weights included.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>What was smelt or seen, each a word.</summary>
    public IReadOnlyList<string> Observed { get; init; } = [];

    /// <summary>Weights full and empty; null where one is missing or they cannot be.</summary>
    public Weighing? Weighing { get; init; }

    /// <summary>Gross − tare, or what was booked where one of the two is missing.</summary>
    public Mass Net { get; init; }

    /// <summary>The contract as the ticket names it; empty where it names none.</summary>
    public string Contract { get; init; } = "";

    /// <summary>Its terms; null where none are named or kept.</summary>
    public ContractTerms? Terms { get; init; }

    /// <summary>Payments with the fact that records each, by time.</summary>
    public IReadOnlyList<(Happening Fact, Payment Payment)> Payments { get; init; } = [];

    /// <summary>How the ticket was voided; null where it stands.</summary>
    public Happening? Voided { get; init; }

    /// <summary>Scales and instruments that had no certificate in force when they were used; empty where all had one.</summary>
    public IReadOnlyList<UncertifiedUse> Uncertified { get; init; } = [];

    /// <summary>Code of the grower: the party's, else the farm in words, else the source's own code.</summary>
    public string GrowerCode => Grower?.Code ?? (Source is { Of.Length: > 0 } ? Source.Of.Split('·')[0].Trim() : Source?.Code ?? "source not booked");

    /// <summary>Name of the grower in words.</summary>
    public string GrowerName => Grower?.Name ?? GrowerCode;

    /// <summary>The district; empty where it is not known.</summary>
    public string District => Field?.District is { Length: > 0 } told ? told : Source is { } place && place.Of.Split('·') is [_, var district, ..] ? district.Trim() : "";

    /// <summary>The variety; empty where it is not known.</summary>
    public string Variety => Field?.VarietyOf(Truck.Material) ?? "";

    /// <summary>The newest reading of a property; null where there is none.</summary>
    public Reading? Read(Property what) => Readings.FirstOrDefault(r => r.What == what);

    /// <summary>What the load is worth under its contract as it stands, or why not.</summary>
    public SettlementOutcome Settle() => Voided is not null ? new NotSettled([$"The ticket was voided: {Voided.Words}"])
        : Contract.Length == 0 ? new NotSettled(["No contract is named on the ticket."])
        : Terms is null ? new NotSettled([$"The ticket names contract {Contract}, and the shelf has no such terms. Keep them, or name another contract by putting the ticket right."])
        : Truckload.Settle(Readings, Terms, Day, Observed);

    /// <summary>Readings that the pay hangs on: the weights and every factor of the contract.</summary>
    public IReadOnlyList<Reading> PaidBy() => [.. Readings.Where(r => r.What is Property.GrossWeight or Property.TareWeight || Terms?.GoesBy(r.What) == true)];

    /// <summary>Why nothing may be paid for it on these instruments, each a sentence; empty where it may.</summary>
    public IReadOnlyList<string> NotForSettlement() =>
        [.. Uncertified.Select(i => $"Not for settlement: {i.Instrument} had no certificate in force on {i.On:R}. Enter its certificate if it had one, or weigh and measure again on one that has.")];

    /// <summary>The receipt record of the load.</summary>
    public ReceiptRecord Receipt() => ReceiptRecord.Of(Truck.Code, Grower, Truck.Material, Variety, Source?.Kind == PlaceKind.Field, Date, Net, Truck.Name, Carrier);
}
