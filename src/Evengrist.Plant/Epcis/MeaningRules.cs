using System.Globalization;
using System.Text.Json;
using Evengrist.Packing.Codes;
using NodaTime;

namespace Evengrist.Plant.Epcis;

/// <summary>What has the right form and still cannot be meant; and what may be meant but is worth a question.</summary>
internal static class MeaningRules
{
    // Cleaning, drying and dust take something out, tempering brings something in; beyond that it is asked about.
    private const decimal Balanced = 0.02m;

    private static readonly string[] Lists = ["epcList", "childEPCs", "inputEPCList", "outputEPCList", "quantityList", "childQuantityList", "inputQuantityList", "outputQuantityList"];

    public static void Look(IReadOnlyList<Part> events, Faults faults, Faults asked)
    {
        foreach (var part in events)
        {
            Parent(part, faults);
            Times(part, faults);
            foreach (var list in (string[])["quantityList", "childQuantityList", "inputQuantityList", "outputQuantityList"])
            {
                Amounts(part.Items(list), faults, asked);
            }

            Balance(part, asked);
            Keys(part, asked);
        }

        Corrections(events, faults);
    }

    private static void Parent(Part part, Faults faults)
    {
        if (part.Member("type")?.Text == "AggregationEvent" && part.Member("action")?.Text is "ADD" or "DELETE" && !part.Has("parentID"))
        {
            faults.Add(part.Told($"parentID is missing: an aggregation with the action {part.Member("action")?.Text} says what the children are put into or taken out of."));
        }
    }

    private static void Times(Part part, Faults faults)
    {
        var happened = Moment(part, "eventTime");
        if (Moment(part, "recordTime") is { } recorded && recorded < happened)
        {
            faults.Add(part.Told($"recordTime {recorded} lies before eventTime {happened}: nothing is recorded before it happens."));
        }

        if (part.Member("errorDeclaration") is { } error && Moment(error, "declarationTime") is { } declared && declared < happened)
        {
            faults.Add(error.Told($"declarationTime {declared} lies before eventTime {happened}: an error is declared after the event."));
        }

        foreach (var sensor in part.Items("sensorElementList"))
        {
            if (sensor.Member("sensorMetadata") is { } data && Moment(data, "startTime") is { } start && Moment(data, "endTime") is { } end && end < start)
            {
                faults.Add(data.Told($"endTime {end} lies before startTime {start}."));
            }
        }
    }

    private static void Amounts(IEnumerable<Part> quantities, Faults faults, Faults asked)
    {
        foreach (var quantity in quantities)
        {
            var number = quantity.Member("quantity");
            if (number is { } amount && (!amount.Json.TryGetDouble(out var value) || !double.IsFinite(value) || value < 0))
            {
                faults.Add(amount.Wrong("a quantity of at least zero"));
            }

            if (quantity.Member("uom") is { } unit)
            {
                if (number is null)
                {
                    faults.Add(unit.Told("uom without quantity: a unit of nothing."));
                }
                else if (UnitCode.Find(unit.Text) is { Deleted: true })
                {
                    faults.Add(unit.Wrong("a unit in use; Recommendation 20 has taken this one out. Count bags without uom, or as H87"));
                }
                else if (UnitCode.Find(unit.Text) is { CubicMetres: not null })
                {
                    asked.Add(unit.Told($"{UnitCode.ToKilograms(0, unit.Text).Why} It is taken as a volume; no kilograms are reckoned from it."));
                }
            }
        }
    }

    private static void Balance(Part part, Faults asked)
    {
        if (Kilograms(part.Items("inputQuantityList")) is not { } taken || Kilograms(part.Items("outputQuantityList")) is not { } given || part.Has("inputEPCList") || part.Has("outputEPCList") || part.Has("transformationID"))
        {
            return;
        }

        if (Math.Abs(given - taken) > Balanced * Math.Max(taken, given))
        {
            asked.Add(part.Told(string.Create(CultureInfo.InvariantCulture, $"{taken:0.###} kg went in and {given:0.###} kg came out: is something left out? More than {100 * Balanced:0} % of difference is asked about, not refused.")));
        }
    }

    // A key of GS1 whose check digit is wrong was mistyped somewhere: whoever scans the goods reads another one.
    private static void Keys(Part part, Faults asked)
    {
        foreach (var id in Lists.SelectMany(l => part.Items(l)).Select(i => i.Json.ValueKind == JsonValueKind.Object ? i.Member("epcClass") : i).Append(part.Member("parentID")).OfType<Part>())
        {
            if (CanonicalId.KeyIn(id.Text) is { } named && named switch { ("01", var key) => !Gtin.TryParse(key, out _, out _), ("00", var key) => !Sscc.TryParse(key, out _, out _), ("414" or "417", var key) => !Gln.TryParse(key, out _, out _), _ => false })
            {
                asked.Add(id.Told($"{Fault.Show(named.Value)} has a wrong check digit: the number was mistyped somewhere, and the goods carry another one."));
            }
        }
    }

    // An event must not declare itself corrected by itself.
    private static void Corrections(IReadOnlyList<Part> events, Faults faults)
    {
        foreach (var part in events)
        {
            if (part.Member("eventID") is { Text: var id } && part.Member("errorDeclaration") is { } error && error.Items("correctiveEventIDs").Any(c => c.Text == id))
            {
                faults.Add(error.Told("correctiveEventIDs names the event itself: what corrects an event is another one."));
            }
        }
    }

    /// <summary>Kilograms of a list, all of them in units of mass; null where one is not.</summary>
    private static decimal? Kilograms(IEnumerable<Part> quantities)
    {
        var (sum, any) = (0m, false);
        foreach (var quantity in quantities)
        {
            if (quantity.Member("quantity") is not { } number || !number.Json.TryGetDecimal(out var amount) || quantity.Member("uom") is not { } uom || UnitCode.Find(uom.Text)?.Kilograms is not { } factor || amount > 1e15m)
            {
                return null;
            }

            (sum, any) = (sum + (amount * factor), true);
        }

        return any ? sum : null;
    }

    private static Instant? Moment(Part part, string name) => part.Member(name) is { } time ? EventTime.Of(time.Text) : null;
}
