using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake;

/// <summary>Everything that stands on a printed receiving ticket, reckoned from the ledger as of a moment.</summary>
public sealed record TicketSheet
{
    /// <summary>The ticket number.</summary>
    public required string Number { get; init; }

    /// <summary>Where the truck stands.</summary>
    public required TruckState State { get; init; }

    /// <summary>The moment looked at.</summary>
    public required Instant AsOf { get; init; }

    /// <summary>Number of the newest fact of the whole ledger: the version of the data.</summary>
    public required FactId Version { get; init; }

    /// <summary>Plate of the truck; may be empty.</summary>
    public string Plate { get; init; } = "";

    /// <summary>Wheat class; may be empty.</summary>
    public string Class { get; init; } = "";

    /// <summary>Grower or haulier; may be empty.</summary>
    public string Haulier { get; init; } = "";

    /// <summary>The field or elevator; null where none is known.</summary>
    public Place? Source { get; init; }

    /// <summary>Code of the bin; empty where it was sent to none.</summary>
    public string Bin { get; init; } = "";

    /// <summary>What was decided, in words; empty where nothing was.</summary>
    public string Decision { get; init; } = "";

    /// <summary>What was on the truck, as it lay; zero where it is not weighed empty.</summary>
    public Mass Net { get; init; }

    /// <summary>The newest reading of each property.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>The contract named on the ticket, in words; empty where none is.</summary>
    public string Contract { get; init; } = "";

    /// <summary>The settlement, or why there is none.</summary>
    public SettlementOutcome Outcome { get; init; } = new NotSettled(["No contract is named on the ticket."]);

    /// <summary>Notes and whatever else other rooms have to say of the load, a sentence each.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Whether the ticket was voided.</summary>
    public bool IsVoid { get; init; }

    /// <summary>Why nobody may be paid by this ticket; null where nothing is known against it.</summary>
    public string? NotForSettlement { get; init; }

    /// <summary>The ticket of a truck; null where it had not come by then.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="truck">The truck.</param>
    /// <param name="at">The moment looked at.</param>
    /// <param name="contract">Finds the terms that a ticket names.</param>
    /// <param name="dayOf">The milling day of a moment.</param>
    public static TicketSheet? Of(Book book, Place truck, Instant at, Func<string, ContractTerms?> contract, Func<Instant, LocalDate> dayOf)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        ArgumentNullException.ThrowIfNull(contract);
        ArgumentNullException.ThrowIfNull(dayOf);
        if (TruckStages.Of(book, truck, at) is not { } state)
        {
            return null;
        }

        var happened = book.HappeningsOn(truck.Id).Where(h => h.At <= at).ToArray();
        var way = LoadWay.Of(book, truck, at);
        var readings = Truckload.Readings(book, truck, at);
        var loaded = way.Where(m => m.To == truck.Id).ToArray();
        var source = loaded.Length > 0 ? book[loaded[0].From] : Arrival.Of(book, truck) is { } arrival ? book.Find(arrival.From) : null;
        var named = Array.FindLast(happened, h => h.Kind == HappeningKind.Contract)?.Words ?? "";
        var terms = named.Length > 0 ? contract(named) : null;
        return new TicketSheet
        {
            Number = truck.Code, State = state, AsOf = at, Version = book.Last, Plate = truck.Name, Class = truck.Material, Haulier = truck.Of, Source = source,
            Bin = state.Bin,
            Decision = Array.FindLast(happened, h => h.Kind == HappeningKind.Decided)?.Words ?? "",
            Net = Truckload.WeighingOf(readings)?.Net ?? Mass.FromGrams(loaded.Sum(m => m.Mass.Grams)),
            Readings = readings,
            Contract = terms?.Title ?? named,
            Outcome = terms is not null ? Truckload.Settle(readings, terms, dayOf(state.Came), Truckload.Observed(book, truck, at))
                : named.Length > 0 ? new NotSettled([$"The ticket names contract {named}, and the shelf has no such terms."])
                : new NotSettled(["No contract is named on the ticket."]),
            Remarks = [.. happened.Where(h => h.Kind is HappeningKind.Note or HappeningKind.Observed or HappeningKind.Declared).Select(h => h.Words)],
            IsVoid = state.Stage == TruckStage.Voided || (way.Count > 0 && way.All(m => m.Mass == Mass.Zero)),
        };
    }
}
