using Evengrist.Plant.Answers;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Packing;

namespace Evengrist.Web.Api;

/// <summary>What a text says and where it leads.</summary>
/// <param name="Symbol">Its elements and the other ways to write it; null where it is no text of GS1.</param>
/// <param name="Product">The product whose trade item number it says; empty where none.</param>
/// <param name="Units">Pallets and loads of the ledger it names.</param>
/// <param name="Lots">Lots of the ledger it names.</param>
/// <param name="Place">Another place of the ledger; null where none.</param>
/// <param name="Held">Why a pallet it names is on hold; empty where none is.</param>
/// <param name="Contradictions">What it says otherwise than the ledger.</param>
/// <param name="Unknown">What of it the ledger does not know.</param>
/// <param name="ScannedBefore">Kept scans of the same pallet.</param>
public sealed record ScanAnswer(Gs1Answer? Symbol, string Product, IReadOnlyList<string> Units, IReadOnlyList<string> Lots, string? Place, IReadOnlyList<string> Held, IReadOnlyList<string> Contradictions, IReadOnlyList<string> Unknown, IReadOnlyList<UnitScan> ScannedBefore)
{
    /// <summary>The answer of a sight.</summary>
    public static ScanAnswer Of(ScanSight s)
    {
        ArgumentNullException.ThrowIfNull(s);
        var places = s.Places!;
        return new(s.Answer, s.Product, [.. places.Units.Select(u => u.Place.Code)], [.. places.Lots.Select(l => l.Code).Concat(places.Units.Select(u => u.Lot).Where(l => l.Length > 0)).Distinct()], places.Place?.Code,
            [.. places.Units.Select(u => u.Hold?.Words).OfType<string>()], places.Contradictions, places.Unknown, s.Earlier);
    }
}

/// <summary>A pallet's label by the ledger.</summary>
/// <param name="Pallet">The pallet's own code.</param>
/// <param name="Number">Its number (SSCC); null where none was given.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="Item">Trade item number on the label.</param>
/// <param name="Count">How many of it.</param>
/// <param name="NetKilograms">Net mass, kg as it lies.</param>
/// <param name="Lot">Its lot.</param>
/// <param name="Made">Milling day.</param>
/// <param name="BestBefore">Best before.</param>
/// <param name="Hold">Why it is on hold; empty where it is not.</param>
/// <param name="Against">Why no label can be made.</param>
/// <param name="Asked">What needs a reason first.</param>
/// <param name="Notes">What to know.</param>
/// <param name="Pdf">Where the label is.</param>
public sealed record PalletLabelAnswer(string Pallet, string? Number, string? Product, string? Item, int? Count, decimal? NetKilograms, string Lot, string? Made, string? BestBefore, string Hold, IReadOnlyList<string> Against, IReadOnlyList<string> Asked, IReadOnlyList<string> Notes, string? Pdf)
{
    /// <summary>The answer of a pallet.</summary>
    public static PalletLabelAnswer Of(PalletOnLedger p)
    {
        ArgumentNullException.ThrowIfNull(p);
        return new(p.Code, p.Facts?.Number?.Digits ?? p.Unit?.Number?.Digits, p.Product?.Code, p.Facts?.Item?.Digits, p.Facts?.Count, p.Unit?.Packed.Kilograms, p.Unit?.Lot ?? "", p.Facts is { } f ? $"{f.Made:R}" : null, p.Facts is { } g ? $"{g.BestBefore:R}" : null, p.Unit?.Hold?.Words ?? "",
            p.Against, p.Asked, p.Notes, p.Facts is null ? null : $"/api/packing/labels/{Uri.EscapeDataString(p.Code)}/label.pdf");
    }
}
