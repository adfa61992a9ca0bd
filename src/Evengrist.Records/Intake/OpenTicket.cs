using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A truck stands at the gate: a ticket with the next number of the milling day is opened for it.</summary>
/// <param name="Station">Where the ticket is opened.</param>
/// <param name="Key">That station's own key of the ticket: the same key on the same day is the same ticket.</param>
/// <param name="From">Code of the field or elevator it says it comes from.</param>
public sealed record OpenTicket(string Station, string Key, string From)
{
    /// <summary>The plate; may be empty.</summary>
    public string Plate { get; init; } = "";

    /// <summary>The wheat class; may be empty.</summary>
    public string Material { get; init; } = "";

    /// <summary>Grower or haulier, in words; may be empty.</summary>
    public string Haulier { get; init; } = "";

    /// <summary>The contract it is settled under; null for none yet.</summary>
    public (string Code, int Version)? Contract { get; init; }

    /// <summary>Code of the booked slot; empty where it came unbooked.</summary>
    public string Booking { get; init; } = "";

    /// <summary>When it came; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>Opens the ticket. The same truck sent again by the same station opens no second one.</summary>
    /// <returns>The ticket's number, and the receipt.</returns>
    /// <exception cref="LedgerRefusal">The place or contract is not known, the key was used for another truck, or another rule is broken; nothing was recorded.</exception>
    public (string Ticket, Receipt Receipt) In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (string.IsNullOrWhiteSpace(Station) || string.IsNullOrWhiteSpace(Key))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, "A ticket is opened by a station under a key of its own: give both, so that a request sent again opens no second ticket.");
        }

        if (Contract is var (code, version) && mill.Contracts.Find(code, version) is null)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"There is no version {version} of a contract {code}. Keep the contract first, or look for a typing error.");
        }

        var settings = mill.Settings;
        var ticket = "";
        var receipt = mill.Record(
            view =>
            {
                var (number, opened) = TicketNumbers.For(view.Book, MillingDay.Of(At ?? now, settings.Zone, settings.DayStart), Station, Key);
                ticket = number.ToString();
                var came = opened is null ? null : view.Book.HappeningsOn(opened.Id).FirstOrDefault(h => h.Kind == HappeningKind.Arrived);
                return [.. Drafts(view.Book, ticket, At ?? came?.At ?? now)];
            },
            by, OnTicket.Source);
        return (ticket, receipt);
    }

    private IEnumerable<Draft> Drafts(Book book, string ticket, Instant at)
    {
        if (book.Named(From).Kind is not (PlaceKind.Field or PlaceKind.Elevator))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{From} is neither a field nor an elevator: a load comes from one of these. Choose it from the list.") { Place = From };
        }

        yield return new OpenPlace(ticket, ticket, PlaceKind.Truck, Plate, Material) { Of = Haulier };
        yield return Gate(ticket, at, new Arrival(Station, Key, book.Named(From).Code, Booking));
        if (Contract is var (code, version))
        {
            yield return new Happen($"{ticket}/contract", ticket, at, HappeningKind.Contract, $"{code} {version}");
        }
    }

    internal static Happen Gate(string ticket, Instant at, Arrival arrival) =>
        new($"{ticket}/arrived", ticket, at, HappeningKind.Arrived, Happening.TextOf($"from {arrival.From}{(arrival.Booking.Length > 0 ? $", booked as {arrival.Booking}" : "")}", arrival.ToJson()));
}
