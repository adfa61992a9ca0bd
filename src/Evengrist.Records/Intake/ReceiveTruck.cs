using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>One truck as the scale house takes it in: weights, readings, contract, and the way of its wheat into a bin, recorded as one batch.</summary>
/// <param name="Ticket">The ticket number: code of the truckload; empty where the next number of the milling day is to be given.</param>
/// <param name="From">Code of the field or elevator it comes from.</param>
/// <param name="Gross">Weight full.</param>
/// <param name="Tare">Weight empty; below the gross.</param>
/// <param name="At">When it was weighed full and probed.</param>
public sealed record ReceiveTruck(string Ticket, string From, Mass Gross, Mass Tare, Instant At)
{
    /// <summary>The plate; may be empty.</summary>
    public string Plate { get; init; } = "";

    /// <summary>The wheat class; may be empty.</summary>
    public string Material { get; init; } = "";

    /// <summary>Which scale, by the name its certificate is kept under; may be empty.</summary>
    public string Scale { get; init; } = "";

    /// <summary>What the probe sample showed.</summary>
    public IReadOnlyList<TruckReading> Readings { get; init; } = [];

    /// <summary>The contract it is settled under; null for none.</summary>
    public (string Code, int Version)? Contract { get; init; }

    /// <summary>Codes from pit to bin in order; empty while the truck still stands full.</summary>
    public IReadOnlyList<string> Route { get; init; } = [];

    /// <summary>When it was tipped and weighed empty; the same moment as <see cref="At"/> by default.</summary>
    public Instant? Tipped { get; init; }

    /// <summary>What the scale says was on it.</summary>
    public Mass Net => Gross - Tare;

    /// <summary>Records the truck. The same truck sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">A weight cannot be, a place or contract is not known, or another rule is broken; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        Demand(mill);
        return mill.Record([.. Drafts(Ticket)], by, OnTicket.Source, recorded);
    }

    /// <summary>Records the truck under the next number of its milling day. The same truck sent again by the same station is not recorded again.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who records it.</param>
    /// <param name="station">Where the ticket is written.</param>
    /// <param name="key">That station's own key of the ticket.</param>
    /// <returns>The ticket's number, and the receipt.</returns>
    /// <exception cref="LedgerRefusal">As above, or the key was used for another truck; nothing was recorded.</exception>
    public (string Ticket, Receipt Receipt) InNumbered(Mill mill, string by, string station, string key)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(station);
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        Demand(mill);
        var settings = mill.Settings;
        var ticket = "";
        var receipt = mill.Record(
            view =>
            {
                ticket = TicketNumbers.For(view.Book, MillingDay.Of(At, settings.Zone, settings.DayStart), station, key).Number.ToString();
                return [.. Drafts(ticket), OpenTicket.Gate(ticket, At, new Arrival(station, key, From))];
            },
            by, OnTicket.Source);
        return (ticket, receipt);
    }

    private void Demand(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Tare < Mass.Zero || Gross <= Tare)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket}: the gross weight ({Gross}) must lie above the tare ({Tare}). Were the two mixed up?") { Place = Ticket };
        }

        if (Contract is var (code, version) && mill.Contracts.Find(code, version) is null)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket}: there is no version {version} of a contract {code}. Keep the contract first, or look for a typing error.") { Place = Ticket };
        }
    }

    private IEnumerable<Draft> Drafts(string ticket)
    {
        var tipped = Tipped ?? At;
        yield return new OpenPlace(ticket, ticket, PlaceKind.Truck, Plate, Material);
        yield return new Move($"{ticket}/net", From, ticket, Net, At);
        yield return OnTicket.Weight(ticket, "gross", Property.GrossWeight, Gross, At, Scale);
        yield return OnTicket.Weight(ticket, "tare", Property.TareWeight, Tare, tipped, Scale);
        foreach (var (n, reading) in Readings.Index())
        {
            yield return new Measure($"{ticket}/{n + 1} {reading.What}", ticket, At, reading.What, reading.Value, reading.Unit, reading.Basis, reading.Method, reading.Instrument, reading.StandardUncertainty);
        }

        if (Contract is var (code, version))
        {
            yield return new Happen($"{ticket}/contract", ticket, At, HappeningKind.Contract, $"{code} {version}");
        }

        var from = ticket;
        foreach (var (n, to) in Route.Index())
        {
            yield return new Move($"{ticket}/way {n + 1}", from, to, Net, tipped);
            from = to;
        }
    }
}
