using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>One truck as the scale house takes it in: weights, readings, contract, and the way of its wheat into a bin, recorded as one batch.</summary>
/// <param name="Ticket">The ticket number: code of the truckload.</param>
/// <param name="From">Code of the field or elevator it comes from.</param>
/// <param name="Gross">Weight full.</param>
/// <param name="Tare">Weight empty; below the gross.</param>
/// <param name="At">When it was weighed full and probed.</param>
public sealed record ReceiveTruck(string Ticket, string From, Mass Gross, Mass Tare, Instant At)
{
    private const string Source = "intake";

    /// <summary>The plate; may be empty.</summary>
    public string Plate { get; init; } = "";

    /// <summary>The wheat class; may be empty.</summary>
    public string Material { get; init; } = "";

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
        ArgumentNullException.ThrowIfNull(mill);
        if (Tare < Mass.Zero || Gross <= Tare)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket}: the gross weight ({Gross}) must lie above the tare ({Tare}). Were the two mixed up?") { Place = Ticket };
        }

        if (Contract is var (code, version) && mill.Contracts.Find(code, version) is null)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket}: there is no version {version} of a contract {code}. Keep the contract first, or look for a typing error.") { Place = Ticket };
        }

        return mill.Record([.. Drafts()], by, Source, recorded);
    }

    private IEnumerable<Draft> Drafts()
    {
        var tipped = Tipped ?? At;
        yield return new OpenPlace(Ticket, Ticket, PlaceKind.Truck, Plate, Material);
        yield return new Move($"{Ticket}/net", From, Ticket, Net, At);
        yield return Weight("gross", Property.GrossWeight, Gross, At);
        yield return Weight("tare", Property.TareWeight, Tare, tipped);
        foreach (var (n, reading) in Readings.Index())
        {
            yield return new Measure($"{Ticket}/{n + 1} {reading.What}", Ticket, At, reading.What, reading.Value, reading.Unit, reading.Basis, reading.Method, reading.Instrument, reading.StandardUncertainty);
        }

        if (Contract is var (code, version))
        {
            yield return new Happen($"{Ticket}/contract", Ticket, At, HappeningKind.Contract, $"{code} {version}");
        }

        var from = Ticket;
        foreach (var (n, to) in Route.Index())
        {
            yield return new Move($"{Ticket}/way {n + 1}", from, to, Net, tipped);
            from = to;
        }
    }

    private Measure Weight(string which, Property what, Mass mass, Instant at) =>
        new($"{Ticket}/{which}", Ticket, at, what, mass.Kilograms, "kg", default, "truck scale");
}
