using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;

namespace Evengrist.Records.Packing;

/// <summary>
/// Numbers (SSCC) of the pallets and loads of the ledger: each number once, each pallet one number, for ever. The serial is the version of a paper of its series, so that the shelf itself refuses a
/// second one, whoever else writes to the same mill.
/// </summary>
public static class UnitNumbers
{
    private const string Series = "sscc-series", OfUnit = "sscc-of-unit", Keys = "gs1-keys", Mine = "mill";

    /// <summary>The number of a unit; null where none was given.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="unit">Code of the pallet or load.</param>
    public static Sscc? Of(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(OfUnit).Newest(Key(unit)) is { } paper ? Read(paper.Json)
            : Elsewhere(mill).TryGetValue(unit, out var digits) && Sscc.TryParse(digits, out var known, out _) ? known : null;
    }

    /// <summary>Every number with its unit's code in capitals: those given here, and those written into the mill's names of GS1.</summary>
    public static IReadOnlyDictionary<string, string> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var all = Elsewhere(mill);
        foreach (var paper in mill.Papers(OfUnit).NewestOfEach())
        {
            all[paper.Code] = Read(paper.Json)?.Digits ?? "";
        }

        return all;
    }

    /// <summary>Code of the unit that has a number; null where none has it.</summary>
    public static string? UnitOf(Mill mill, Sscc sscc)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sscc);
        // Numberings change by version; a number of an earlier series is still the pallet's.
        foreach (var numbering in mill.Papers(UnitNumbering.Kind).All().Read<UnitNumbering>(UnitNumbering.TryRead).Select(r => r.Value).DistinctBy(n => n.Series))
        {
            if (numbering.Serial(sscc) is { } serial and >= 1 and <= int.MaxValue && mill.Papers(Series).Find(numbering.Series, (int)serial) is { } given)
            {
                return JsonSerializer.Deserialize<string>(given.Json);
            }
        }

        return Elsewhere(mill).FirstOrDefault(u => u.Value == sscc.Digits).Key;
    }

    /// <summary>The unit's number; the next one where it has none yet.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="unit">Code of a pallet or load of the ledger.</param>
    /// <param name="by">Who asks for it.</param>
    /// <returns>The number, or why there is none.</returns>
    public static (Sscc? Number, string? Refused) Give(Mill mill, string unit, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentException.ThrowIfNullOrWhiteSpace(by);
        if (mill.Ask(view => view.Book.Find(unit) is { Kind: PlaceKind.Pallet or PlaceKind.BulkLoad } place ? place.Code : null) is not { } code)
        {
            return (null, $"There is no pallet or load {unit} in the ledger: only what is there gets a number.");
        }

        var (numbering, version, _) = KeepUnitNumbering.Newest(mill);
        var taken = Elsewhere(mill).Values.ToHashSet(StringComparer.Ordinal);
        while (true)
        {
            if (Of(mill, code) is { } known)
            {
                return (known, null);
            }

            if (version == 0)
            {
                return (null, "No company prefix is kept: without one no pallet gets a number (SSCC). Keep the prefix that GS1 lent the mill on the page Packing, Labels.");
            }

            var serial = Math.Max(1L + (mill.Papers(Series).Newest(numbering.Series)?.Version ?? 0), numbering.First);
            while (numbering.Number(serial) is { } one && taken.Contains(one.Digits))
            {
                serial++;
            }

            if (serial > int.MaxValue || numbering.Number(serial) is not { } number)
            {
                return (null, $"All numbers of the prefix {numbering.Prefix} with extension digit {numbering.Extension} are given: keep the next extension digit.");
            }

            try
            {
                mill.Papers(Series).Keep(numbering.Series, (int)serial, JsonSerializer.Serialize(code), by);
                mill.Papers(OfUnit).Keep(Key(code), 1, JsonSerializer.Serialize(number.Digits), by);
                return (number, null);
            }
            catch (LedgerRefusal refusal) when (refusal.Rule == LedgerRule.KeyTaken)
            {
                // Somebody else took the serial, or numbered this pallet meanwhile: look again.
            }
        }
    }

    private static string Key(string unit) => unit.Trim().ToUpperInvariant();

    private static Sscc? Read(string json) => Sscc.TryParse(JsonSerializer.Deserialize<string>(json), out var sscc, out _) ? sscc : null;

    // Numbers given by other means stand in the mill's names of GS1.
    private static Dictionary<string, string> Elsewhere(Mill mill)
    {
        var all = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        if (mill.Papers(Keys).Newest(Mine) is { } paper)
        {
            using var json = JsonDocument.Parse(paper.Json);
            if (json.RootElement.TryGetProperty("units", out var units))
            {
                foreach (var unit in units.EnumerateObject())
                {
                    all[unit.Name] = unit.Value.GetString() ?? "";
                }
            }
        }

        return all;
    }
}
