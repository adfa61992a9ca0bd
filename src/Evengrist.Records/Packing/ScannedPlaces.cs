using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing.Dispatch;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>
/// Where in the ledger a scanned or typed text leads: the one piece that tells it for pages, dispatch, recall and the command line. Read the text with <c>ScanReading</c> first.
/// </summary>
/// <param name="Units">Pallets and loads it names itself, by number or code.</param>
/// <param name="Lots">Lots it names, with their packages.</param>
/// <param name="Place">Another place of the ledger whose code it is, such as a bin or a truck's ticket; null where it is none.</param>
/// <param name="Contradictions">What the text says otherwise than the ledger, each a sentence.</param>
/// <param name="Unknown">What of it the ledger does not know, each a sentence.</param>
public sealed record ScannedPlaces(IReadOnlyList<ScannedUnit> Units, IReadOnlyList<FlourLot> Lots, Place? Place, IReadOnlyList<string> Contradictions, IReadOnlyList<string> Unknown)
{
    /// <summary>Whether it leads anywhere.</summary>
    public bool IsFound => Units.Count > 0 || Lots.Count > 0 || Place is not null;

    /// <summary>All pallets and loads it reaches: those it names, or those of its lots.</summary>
    public IReadOnlyList<string> Reached => Units.Count > 0 ? [.. Units.Select(u => u.Place.Code)] : [.. Lots.SelectMany(l => l.Packages).Select(p => p.Place.Code)];

    /// <summary>Looks in the ledger.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="keys">What the text names.</param>
    /// <param name="asOf">The moment looked at.</param>
    public static ScannedPlaces Of(Mill mill, ScannedKeys keys, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(keys);
        var (unknown, against) = (new List<string>(), new List<string>());
        var code = keys.Unit is { } sscc ? UnitNumbers.UnitOf(mill, sscc) : keys.Own;
        if (keys.Unit is not null && code is null)
        {
            unknown.Add($"No pallet of this mill has the number {keys.Unit}.");
        }

        var (rules, settings) = (KeepReleaseRules.Newest(mill).Rules, mill.Settings);
        var number = code is null ? null : UnitNumbers.Of(mill, code);
        var lots = new FlourLots(rules, settings.Zone, settings.DayStart);
        var (unit, lot, other) = mill.Ask(view =>
        {
            var place = code is null ? null : view.Book.Find(code);
            var isUnit = place is { Kind: PlaceKind.Pallet or PlaceKind.BulkLoad };
            var named = (keys.Lot ?? (place is null ? keys.Own : null)) is { } text ? lots.Find(view.Book, text) : null;
            return (isUnit ? Seen(view.Book, lots, place!, number, asOf) : null, named, isUnit ? null : place);
        });
        unit = unit is { Stand.Here.Grams: > 0 } ? unit with { OnLoad = DispatchShelf.OpenLoadOf(mill, unit.Place.Code)?.Number } : unit;
        if (keys.Lot is { } said && lot is null)
        {
            unknown.Add($"There is no lot {said} in the ledger.");
        }

        if (unit is { Lot.Length: > 0 } && keys.Lot is { } label && !unit.Lot.Equals(label, StringComparison.OrdinalIgnoreCase))
        {
            against.Add($"The label says lot {label}; by the ledger {unit.Place.Code} is of lot {unit.Lot}.");
        }

        if (unit is not null && keys is { NetKilograms: { } each } && keys.Count is { } count && count * each != unit.Packed.Kilograms)
        {
            against.Add(FormattableString.Invariant($"The label says {count} × {each} kg; by the ledger {unit.Packed.Kilograms:0.###} kg were packed."));
        }

        if (keys.Own is not null && unit is null && lot is null && other is null)
        {
            unknown.Add($"“{keys.Own}” is no pallet, lot or place of the ledger, and no code of GS1.");
        }

        return new(unit is null ? [] : [unit], lot is null ? [] : [lot], other, against, unknown);
    }

    /// <summary>A pallet or load as it stands; null where the ledger has none of that code.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">Its own code.</param>
    /// <param name="asOf">The moment looked at.</param>
    public static ScannedUnit? Unit(Mill mill, string code, Instant asOf) => Of(mill, new ScannedKeys(code) { Own = code }, asOf).Units is [var unit, ..] ? unit : null;

    private static ScannedUnit Seen(Book book, FlourLots lots, Place place, Sscc? number, Instant asOf)
    {
        var stand = UnitStand.Of(book, place.Id, asOf);
        return new(place, stand.PackedAt is { } at ? lots.CodeOf(book, place, at) : "", stand, book.HoldOn(place.Id, asOf), number, null);
    }
}
