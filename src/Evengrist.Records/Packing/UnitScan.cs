using System.Text.Json;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>One scan of a pallet or load that was kept.</summary>
/// <param name="At">When.</param>
/// <param name="By">Who.</param>
/// <param name="Text">What was scanned.</param>
public sealed record UnitScan(Instant At, string By, string Text)
{
    private const string Kind = "unit-scan";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Every kept scan of a unit, the first first.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="unit">Code of the unit.</param>
    public static IReadOnlyList<UnitScan> Of(Mill mill, string unit)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(unit);
        var (shelf, code) = (mill.Papers(Kind), unit.ToUpperInvariant());
        return [.. Enumerable.Range(1, shelf.Newest(code)?.Version ?? 0).Select(v => JsonSerializer.Deserialize<UnitScan>(shelf.Find(code, v)!.Json, Options)!)];
    }

    /// <summary>Every kept scan of every unit, by unit, the first first.</summary>
    public static IEnumerable<(string Unit, UnitScan Scan)> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(Kind).All().Select(p => (p.Code, JsonSerializer.Deserialize<UnitScan>(p.Json, Options)!));
    }

    /// <summary>Keeps a scan of a unit.</summary>
    public static void Keep(Mill mill, string unit, UnitScan scan)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(scan);
        mill.Papers(Kind).KeepNext(unit.ToUpperInvariant(), JsonSerializer.Serialize(scan, Options), scan.By);
    }
}
