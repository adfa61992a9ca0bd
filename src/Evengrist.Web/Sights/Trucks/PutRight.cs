using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>What a person puts right on a ticket: each correction names the fact it stands in for and says why.</summary>
public sealed class PutRight
{
    /// <summary>Made with the form, so that the same form sent twice is one correction.</summary>
    public string? Key { get; set; }

    /// <summary>Number of the newest fact that was seen on the ticket.</summary>
    public long? Seen { get; set; }

    /// <summary>Name of the property, <c>bin</c> or <c>contract</c>.</summary>
    public string? What { get; set; }

    /// <summary>The right value, code or title.</summary>
    public string? Value { get; set; }

    /// <summary>Basis of the right value, for a share of solids.</summary>
    public string? ValueBasis { get; set; }

    /// <summary>Why.</summary>
    public string? Why { get; set; }

    /// <summary>What can be put right on a ticket.</summary>
    public static IEnumerable<(string Value, string Words)> Choices(TruckSight truck)
    {
        ArgumentNullException.ThrowIfNull(truck);
        foreach (var reading in truck.Readings)
        {
            yield return (reading.What.ToString(), $"{reading.What.Words()} [{reading.Unit}], now {reading.Value} {(reading.Basis.IsStated ? reading.Basis : "")}");
        }

        if (truck.Bin is { } bin)
        {
            yield return ("bin", $"bin, now {bin.Code}");
        }

        yield return ("contract", $"contract, now {truck.Contract?.Text ?? "none"}");
    }

    /// <summary>The corrections.</summary>
    /// <param name="truck">The ticket as it stands.</param>
    /// <param name="book">The ledger.</param>
    /// <param name="terms">The contracts.</param>
    /// <param name="fault">What is wrong with the form; null where nothing is.</param>
    public IReadOnlyList<Draft> ToDrafts(TruckSight truck, Book book, Terms terms, out string? fault)
    {
        ArgumentNullException.ThrowIfNull(truck);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(terms);
        var (value, why) = ((Value ?? "").Trim(), (Why ?? "").Trim());
        if (value.Length == 0 || why.Length == 0 || string.IsNullOrWhiteSpace(Key))
        {
            fault = "Give the right value and the reason; both are kept for ever beside the first one.";
            return [];
        }

        if (What == "contract")
        {
            return Contract(truck, terms.Find(value), value, why, out fault);
        }

        if (What == "bin")
        {
            return Bin(truck, book.Find(value), value, why, out fault);
        }

        fault = "Choose what is to be put right.";
        return truck.Readings.FirstOrDefault(r => r.What.ToString() == What) is { } reading ? Reading(truck, reading, value, why, out fault) : [];
    }

    private Draft[] Contract(TruckSight truck, ContractTerms? named, string value, string why, out string? fault)
    {
        fault = named is null ? $"There is no contract “{value}” on the shelf." : null;
        return named is null ? [] : [new Happen(Key!, truck.Truck.Code, truck.At, HappeningKind.Contract, named.Title) { Corrects = truck.Contract?.Id, Note = why }];
    }

    private Draft[] Bin(TruckSight truck, Place? bin, string value, string why, out string? fault)
    {
        var last = truck.Way.LastOrDefault(m => m.To.Kind == PlaceKind.Bin);
        fault = bin is not { Kind: PlaceKind.Bin } ? $"There is no wheat bin “{value}”." : last is null ? "It was tipped into no bin yet." : null;
        return fault is null ? [new Move(Key!, last!.From.Code, bin!.Code, last.Mass, last.At, last.Until) { Corrects = last.Id, Note = why }] : [];
    }

    // A weight carries the load with it: every movement of the load is put right by the same difference, in one batch.
    private Draft[] Reading(TruckSight truck, Reading reading, string text, string why, out string? fault)
    {
        var typed = new Typed();
        var share = reading.What.NeedsBasis() ? typed.Share("Value", reading.What.Words(), text, reading.Unit, ValueBasis) : null;
        var number = reading.What.NeedsBasis() ? share?.Value : typed.Number("Value", text, reading.Unit);
        var basis = share?.Basis ?? default;
        fault = typed.FaultOf("Value") ?? (number is { } n ? Readings.Fault(reading.What, n, reading.Unit, basis) : "Give the right value.");
        if (fault is not null || number is not { } value)
        {
            return [];
        }

        var right = new Measure(Key!, truck.Truck.Code, reading.At, reading.What, value, reading.Unit, basis, reading.Method, reading.Instrument, reading.StandardUncertainty) { Corrects = reading.Id, Note = why };
        // Before it is weighed empty nothing has been booked that hangs on the weight.
        if (reading.What is not (Property.GrossWeight or Property.TareWeight) || truck.Read(Property.TareWeight) is null || truck.Read(Property.GrossWeight) is null)
        {
            return [right];
        }

        Mass Of(Property what) => Mass.FromKilograms(what == reading.What ? value : truck.Read(what)?.Value ?? 0m);
        var (gross, tare) = (Of(Property.GrossWeight), Of(Property.TareWeight));
        fault = Weighing.Fault(gross, tare) ?? (gross == tare ? "Then nothing was delivered. Void the ticket's movements on the ledger page instead." : null);
        return fault is not null ? [] :
            [right, .. truck.Way.Select((m, i) => new Move($"{Key} way {i + 1}", m.From.Code, m.To.Code, gross - tare, m.At, m.Until) { Corrects = m.Id, Note = why })];
    }
}
