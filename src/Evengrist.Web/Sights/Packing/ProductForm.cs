using System.Globalization;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>A product as it was typed.</summary>
public sealed class ProductForm
{
    /// <summary>The version it follows; 0 for a new one.</summary>
    public string? Seen { get; set; }

    /// <summary>Its code.</summary>
    public string? Code { get; set; }

    /// <summary>Its name in words.</summary>
    public string? Name { get; set; }

    /// <summary>The flour.</summary>
    public string? Flour { get; set; }

    /// <summary>What it is sold in.</summary>
    public string? Kind { get; set; }

    /// <summary>Net mass of a pack, kg.</summary>
    public string? Pack { get; set; }

    /// <summary>Packs in a case.</summary>
    public string? PerCase { get; set; }

    /// <summary>Packs on a pallet.</summary>
    public string? PerPallet { get; set; }

    /// <summary>Mass of an empty pack, g.</summary>
    public string? Tare { get; set; }

    /// <summary>What the ledger writes on its pallets.</summary>
    public string? PackedAs { get; set; }

    /// <summary>Trade item number of the pack.</summary>
    public string? PackGtin { get; set; }

    /// <summary>Trade item number of the case.</summary>
    public string? CaseGtin { get; set; }

    /// <summary>Months it keeps.</summary>
    public string? Months { get; set; }

    /// <summary>Allergens, parted by commas.</summary>
    public string? Allergens { get; set; }

    /// <summary>Whether it is enriched.</summary>
    public bool Enriched { get; set; }

    /// <summary>The label's version; empty where none is approved.</summary>
    public string? Label { get; set; }

    /// <summary>Why it changes.</summary>
    public string? Reason { get; set; }

    /// <summary>One to begin with: what is kept, or an empty one.</summary>
    internal static ProductForm Of(KeptProduct? kept) => kept is not { Product: var p } ? new() { Seen = "0", Months = "12", Allergens = Product.Wheat } : new()
    {
        Seen = Whole(kept.Version), Code = p.Code, Name = p.Name, Flour = p.Flour, Kind = p.Kind.ToString(), Pack = p.PackGrams == 0 ? "" : p.Pack.Kilograms.ToString("0.###", CultureInfo.InvariantCulture),
        PerCase = Whole(p.PerCase), PerPallet = Whole(p.PerPallet), Tare = Whole(p.TareGrams), PackedAs = p.PackedAs, PackGtin = p.PackGtin, CaseGtin = p.CaseGtin, Months = Whole(p.ShelfMonths),
        Allergens = string.Join(", ", p.Allergens), Enriched = p.Enriched, Label = p.Label?.Version,
    };

    /// <summary>Keeps it as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    internal (KeptProduct? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, string? by, Instant now)
    {
        List<string> faults = [.. string.IsNullOrWhiteSpace(by) ? [Visiting.Visit.Nameless] : Array.Empty<string>()];
        var kind = Enum.TryParse<PackKind>(Kind, out var named) && named.ToString() == Kind ? named : PackKind.Bag;
        var isBulk = kind == PackKind.Bulk;
        var pack = TypedNumber.Read("Net mass of a pack, kg", Pack, faults, 0, 2000, demanded: !isBulk);
        var (perCase, perPallet, tare, months) = (Count("Packs in a case", PerCase, faults, false), Count("Packs on a pallet", PerPallet, faults, !isBulk), Count("An empty pack, g", Tare, faults, false), Count("Months it keeps", Months, faults, true));
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var old = Products.Find(mill, Code ?? "")?.Label;
        var label = string.IsNullOrWhiteSpace(Label) ? null : old?.Version == Label.Trim() ? old : new ApprovedLabel(Label.Trim(), by!.Trim(), now);
        return Products.Keep(mill, new Product((Code ?? "").Trim(), (Name ?? "").Trim(), (Flour ?? "").Trim(), kind, Mass.FromKilograms((decimal)(pack ?? 0)).Grams)
        {
            PerCase = perCase, PerPallet = perPallet, TareGrams = tare, PackedAs = (PackedAs ?? "").Trim(), PackGtin = (PackGtin ?? "").Trim(), CaseGtin = (CaseGtin ?? "").Trim(), ShelfMonths = months,
            Allergens = [.. (Allergens ?? "").Split([',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)], Enriched = Enriched, Label = label, Reason = (Reason ?? "").Trim(),
        }, by, int.TryParse(Seen, out var seen) ? seen : null);
    }

    private static string Whole(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static int Count(string what, string? text, List<string> faults, bool demanded)
    {
        var read = TypedNumber.Read(what, text, faults, 0, 1_000_000, demanded);
        if (read is { } number && number != Math.Floor(number))
        {
            faults.Add($"{what}: a whole number; read {text!.Trim()}.");
        }

        return (int)(read ?? 0);
    }
}
