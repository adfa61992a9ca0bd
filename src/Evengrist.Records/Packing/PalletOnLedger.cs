using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A pallet of the ledger held against its product, as far as a label can be made of it.</summary>
/// <param name="Code">The code asked for.</param>
/// <param name="Unit">How it stands; null where the ledger has none of that code.</param>
/// <param name="Product">The product on it; null where none fits.</param>
/// <param name="Facts">What its label says; null where something stands against it.</param>
/// <param name="Against">Why no label can be made, each a sentence that says what to do.</param>
/// <param name="Asked">What needs a reason before it is labelled for dispatch: a hold, a pallet that has gone.</param>
/// <param name="Notes">What to know: a pallet that is not full.</param>
public sealed record PalletOnLedger(string Code, ScannedUnit? Unit, Product? Product, PalletFacts? Facts, IReadOnlyList<string> Against, IReadOnlyList<string> Asked, IReadOnlyList<string> Notes)
{
    /// <summary>Looks a pallet up.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">Its own code.</param>
    /// <param name="asOf">The moment looked at.</param>
    /// <param name="said">What whoever asks believes of it; what the ledger says otherwise stands against the label.</param>
    public static PalletOnLedger Of(Mill mill, string code, Instant asOf, SaidOfPallet? said = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(code);
        if (ScannedPlaces.Unit(mill, code.Trim(), asOf) is not { Place.Kind: PlaceKind.Pallet } unit)
        {
            return new(code, null, null, null, [$"There is no pallet {code.Trim()} in the ledger."], [], []);
        }

        var product = Products.On(mill, unit.Place);
        List<string> against = [.. StandsAgainst(unit, product)], asked = [.. AskedOf(mill, unit)], notes = [];
        if (product is not { PackGrams: > 0 } || unit.PackedAt is not { } packed || against.Count > 0 || !LotCode.TryParse(unit.Lot, out var lot, out _))
        {
            return new(unit.Place.Code, unit, product, null, against, asked, notes);
        }

        var packs = (int)(unit.Packed.Grams / product.PackGrams);
        if (packs != product.PerPallet)
        {
            notes.Add($"By the ledger {packs} packs lie on it; a full pallet has {product.PerPallet}.");
        }

        against.AddRange(Contradictions(unit, product, packs, said));
        var day = MillingDay.Of(packed, mill.Settings.Zone, mill.Settings.DayStart);
        var isCases = product is { PerCase: > 0, CaseNumber: not null } && packs % product.PerCase == 0;
        var facts = new PalletFacts(mill.Settings.Name + (mill.Settings.IsDemonstration ? " (an invented mill)" : ""), unit.Place.Code, product.Name, isCases ? product.CaseNumber : product.PackNumber, isCases ? packs / product.PerCase : packs,
            (isCases ? product.PerCase : 1) * product.Pack.Kilograms, lot, day, PackDates.BestBefore(day, product.ShelfMonths), product.AllergensBeyondWheat) { Number = unit.Number, Hold = unit.Hold?.Words ?? "" };
        if (facts.Item is null)
        {
            notes.Add($"{product.Code} has no trade item number: the label carries the pallet's own code alone. Give the product one.");
        }

        return new(unit.Place.Code, unit, product, against.Count == 0 ? facts : null, against, asked, notes);
    }

    /// <summary>Gives the pallet its number and keeps that a label was made; then it can be printed with it.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who makes the label.</param>
    /// <param name="reason">Why it is labelled all the same where that is asked.</param>
    /// <param name="now">The present moment.</param>
    /// <returns>The pallet with its number, and what stands against it or why it has none.</returns>
    public (PalletOnLedger Pallet, IReadOnlyList<string> Refused) Label(Mill mill, string? by, string? reason, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        string[] refused =
        [
            .. Against,
            .. string.IsNullOrWhiteSpace(by) ? ["Say who makes the label: every record carries a name."] : Array.Empty<string>(),
            .. Asked.Count > 0 && string.IsNullOrWhiteSpace(reason) ? [.. Asked.Select(a => $"{a} Say why it is labelled all the same.")] : Array.Empty<string>(),
        ];
        if (refused.Length > 0 || Facts is null)
        {
            return (this, refused);
        }

        var number = Facts.Item is null || KeepUnitNumbering.Newest(mill).Version == 0 ? Facts.Number : UnitNumbers.Give(mill, Code, by!.Trim()).Number;
        LabelMade.Keep(mill, Code, new LabelMade(now, by!.Trim(), (reason ?? "").Trim(), Facts.Lot.Text, Facts.Count));
        return (this with { Facts = Facts with { Number = number } }, []);
    }

    private static IEnumerable<string> StandsAgainst(ScannedUnit unit, Product? product)
    {
        if (unit.PackedAt is null)
        {
            yield return $"Nothing was packed on {unit.Place.Code} by then.";
            yield break;
        }

        if (product is null)
        {
            yield return $"No product is “{unit.Place.Material}” packed as “{unit.Place.Name}”: keep the product first.";
            yield break;
        }

        if (product.Label is null)
        {
            yield return $"{product.Code} has no approved label: a named person approves it on the page of the product.";
        }

        if (unit.Packed.Grams % product.PackGrams != 0)
        {
            yield return FormattableString.Invariant($"By the ledger {unit.Packed.Kilograms:0.###} kg lie on it, which are no whole packs of {product.Pack.Kilograms:0.###} kg: look at the pallet, and put the ledger right.");
        }

        if (!LotCode.TryParse(unit.Lot, out _, out var refusal))
        {
            yield return unit.Lot.Length == 0 ? $"{unit.Place.Code} belongs to no lot by the mill's release rules." : refusal;
        }
    }

    private static IEnumerable<string> AskedOf(Mill mill, ScannedUnit unit)
    {
        if (unit.Hold is { } hold)
        {
            yield return $"{unit.Place.Code} is on HOLD: {hold.Words}.";
        }

        if (unit.Stand is { Where: UnitWhere.Sent, To: { } to, LeftAt: { } at })
        {
            yield return $"{unit.Place.Code} has gone to {to.Code} on {at.InZone(mill.Settings.Zone).Date:uuuu-MM-dd}.";
        }
        else if (unit.Stand is { Where: UnitWhere.CameBack, BackFrom: { } from, BackAt: { } back })
        {
            yield return $"{unit.Place.Code} came back from {from.Code} on {back.InZone(mill.Settings.Zone).Date:uuuu-MM-dd}.";
        }
        else if (unit.Stand is { Where: UnitWhere.Used })
        {
            yield return $"{unit.Place.Code} was used in the mill{(unit.Stand.To is { } into ? $", last into {into.Code}" : "")}: nothing lies on it.";
        }
    }

    private static IEnumerable<string> Contradictions(ScannedUnit unit, Product product, int packs, SaidOfPallet? said)
    {
        if (said?.Lot is { Length: > 0 } lot && !lot.Trim().Equals(unit.Lot, StringComparison.OrdinalIgnoreCase))
        {
            yield return $"You say lot {lot.Trim()}; by the ledger {unit.Place.Code} is of lot {unit.Lot}.";
        }

        if (said?.Packs is { } count && count != packs)
        {
            yield return $"You say {count} packs; by the ledger {packs} lie on {unit.Place.Code}.";
        }

        if (said?.Product is { Length: > 0 } code && !code.Trim().Equals(product.Code, StringComparison.OrdinalIgnoreCase))
        {
            yield return $"You say {code.Trim()}; by the ledger {unit.Place.Code} is {product.Code}.";
        }
    }
}

/// <summary>What whoever asks for a label believes of the pallet; null for what is not said.</summary>
/// <param name="Lot">Its lot.</param>
/// <param name="Packs">Packs on it.</param>
/// <param name="Product">Code of the product.</param>
public sealed record SaidOfPallet(string? Lot = null, int? Packs = null, string? Product = null);
