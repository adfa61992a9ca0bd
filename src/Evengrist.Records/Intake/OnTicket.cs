using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>What every change of a ticket has in common.</summary>
internal static class OnTicket
{
    public const string Source = "intake";

    /// <summary>The truck of a ticket.</summary>
    /// <exception cref="LedgerRefusal">There is none, or it was voided.</exception>
    public static Place Truck(Book book, string ticket)
    {
        if (book.Find(ticket) is not { Kind: PlaceKind.Truck } truck)
        {
            throw new LedgerRefusal(LedgerRule.UnknownPlace, $"There is no ticket {ticket}. Open it first, or look for a typing error.") { Place = ticket };
        }

        return book.HappeningsOn(truck.Id).Any(h => h.Kind == HappeningKind.Voided) ? throw Refusal(truck, "was voided: open a new ticket for this truck.") : truck;
    }

    public static Reading? Read(Book book, Place truck, Property what) => book.ReadingsOn(truck.Id).LastOrDefault(r => r.What == what);

    /// <summary>When a weight was read, if it is recorded already just so; the moment given otherwise. So a request sent again is the same request.</summary>
    public static Instant When(Reading? recorded, decimal value, Instant? at, Instant now) => at ?? (recorded is { } there && there.Value == value ? there.At : now);

    /// <summary>A happening on a ticket; sent again without a moment of its own it is the one that was recorded.</summary>
    public static Happen Said(Book book, Place truck, string key, HappeningKind kind, string text, Instant? at, Instant now)
    {
        var there = book.HappeningsOn(truck.Id).LastOrDefault(h => h.Kind == kind && h.Text == text);
        return new Happen($"{truck.Code}/{key}", truck.Code, at ?? there?.At ?? now, kind, text);
    }

    public static LedgerRefusal Refusal(Place truck, string fault) => new(LedgerRule.Malformed, $"Ticket {truck.Code} {fault}") { Place = truck.Code };

    public static Measure Weight(string ticket, string which, Property what, Quantities.Mass mass, Instant at, string scale) =>
        new($"{ticket}/{which}", ticket, at, what, mass.Kilograms, "kg", default, "truck scale", scale);
}
