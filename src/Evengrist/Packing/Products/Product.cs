using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Quantities;

namespace Evengrist.Packing.Products;

/// <summary>One flour in one pack, as it is ordered, labelled and put on pallets.</summary>
/// <param name="Code">What the mill calls it, unique; letters, digits and hyphens.</param>
/// <param name="Name">Its name in words.</param>
/// <param name="Flour">The flour, as the ledger names the material of its pallets and loads.</param>
/// <param name="Kind">What it is sold in.</param>
/// <param name="PackGrams">Net mass of a pack, grams; 0 for bulk.</param>
public sealed record Product(string Code, string Name, string Flour, PackKind Kind, long PackGrams = 0)
{
    /// <summary>Kind of its paper.</summary>
    public const string PaperKind = "product";

    /// <summary>The allergen that every flour of wheat contains.</summary>
    public const string Wheat = "wheat";

    /// <summary>Heaviest pack and pallet, grams: 2 t [ours, above what a big bag or a pallet carries].</summary>
    public const long MostGrams = 2_000_000;

    private const int LongestCode = 40, LongestName = 120;

    /// <summary>Packs in a bale or case; 0 where there is none.</summary>
    public int PerCase { get; init; }

    /// <summary>Packs on a pallet; 0 for bulk.</summary>
    public int PerPallet { get; init; }

    /// <summary>Mass of an empty pack, grams: what the weight shows beyond the net mass. 0 where it was not weighed.</summary>
    public long TareGrams { get; init; }

    /// <summary>What the ledger writes on its pallets: <c>40 × 25 kg</c>. Empty where nothing is.</summary>
    public string PackedAs { get; init; } = "";

    /// <summary>Trade item number of the pack; empty where the mill has given none.</summary>
    public string PackGtin { get; init; } = "";

    /// <summary>Trade item number of the bale or case; empty where the mill has given none.</summary>
    public string CaseGtin { get; init; } = "";

    /// <summary>Months it is said to keep, from the milling day.</summary>
    public int ShelfMonths { get; init; } = 12;

    /// <summary>Allergens it contains, wheat among them.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [Wheat];

    /// <summary>Whether vitamins and iron are added to it.</summary>
    public bool Enriched { get; init; }

    /// <summary>The label that may be printed; null where none is approved.</summary>
    public ApprovedLabel? Label { get; init; }

    /// <summary>Why this version differs from the one before; empty for the first.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Net mass of a pack; zero for bulk.</summary>
    public Mass Pack => Mass.FromGrams(PackGrams);

    /// <summary>Mass of an empty pack.</summary>
    public Mass Tare => Mass.FromGrams(TareGrams);

    /// <summary>Net mass of a full pallet: packs times net mass; zero for bulk.</summary>
    public Mass Pallet => Mass.FromGrams(PackGrams * PerPallet);

    /// <summary>Allergens beyond wheat, which every flour here contains: what a line must be cleaned of.</summary>
    public IReadOnlyList<string> AllergensBeyondWheat => [.. Allergens.Where(a => !a.Equals(Wheat, StringComparison.OrdinalIgnoreCase))];

    /// <summary>Its pack in words: <c>2 kg, 8 to a case, 500 on a pallet</c>.</summary>
    public string PackWords => Kind == PackKind.Bulk ? "loose"
        : FormattableString.Invariant($"{Pack.Kilograms:0.###} kg") + (PerCase > 0 ? FormattableString.Invariant($", {PerCase} to a case") : "") + FormattableString.Invariant($", {PerPallet} on a pallet");

    /// <summary>The trade item number of the pack; null where there is none.</summary>
    public Gtin? PackNumber => Gtin.TryParse(PackGtin, out var gtin, out _) ? gtin : null;

    /// <summary>The trade item number of the bale or case; null where there is none.</summary>
    public Gtin? CaseNumber => Gtin.TryParse(CaseGtin, out var gtin, out _) ? gtin : null;

    /// <summary>What is wrong with it, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Code is null || Code.Length is < 1 or > LongestCode || Code.Any(c => !char.IsAsciiLetterOrDigit(c) && c is not ('-' or '.')) ? [$"A code has 1 to {LongestCode} letters, digits, hyphens or points: “{Code}” has not."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Name) || Name.Length > LongestName ? [$"A product has a name of at most {LongestName} characters."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Flour) ? ["Say which flour it is, as on its pallets."] : Array.Empty<string>(),
        .. Kind == PackKind.Bulk ? BulkFaults() : PackFaults(),
        .. TareGrams is >= 0 and <= 50_000 ? Array.Empty<string>() : ["An empty pack weighs 0 to 50 kg."],
        .. ShelfMonths is >= 1 and <= PackDates.MostMonths ? Array.Empty<string>() : [$"It keeps 1 to {PackDates.MostMonths} months; got {ShelfMonths}."],
        .. Allergens is null || Allergens.Any(string.IsNullOrWhiteSpace) ? ["An allergen is a word: leave no empty one."] : Array.Empty<string>(),
        .. Allergens is not null && !Allergens.Contains(Wheat, StringComparer.OrdinalIgnoreCase) ? ["Flour of wheat contains wheat: name it among the allergens."] : Array.Empty<string>(),
        .. GtinFaults(PackGtin, "pack"), .. GtinFaults(CaseGtin, "case"),
        .. CaseGtin.Length > 0 && PerCase == 0 ? ["It has a number for the case but no packs in a case."] : Array.Empty<string>(),
        .. PackNumber is { } pack && pack == CaseNumber ? ["Pack and case have the same number: a case is a trade item of its own."] : Array.Empty<string>(),
        .. Label?.Faults() ?? [],
    ];

    /// <summary>It as JSON.</summary>
    public string ToJson() => PackingJson.Write(this);

    /// <summary>Reads one and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out Product? product, out IReadOnlyList<string> faults) => PackingJson.TryRead(json, p => p.Faults(), out product, out faults);

    /// <summary>The product that lies on a pallet or in a load, by its flour and what is written on it.</summary>
    /// <param name="products">The mill's products.</param>
    /// <param name="place">A pallet or a bulk load.</param>
    /// <returns>Null where none fits; where only the pack differs none does.</returns>
    public static Product? On(IEnumerable<Product> products, Place place)
    {
        ArgumentNullException.ThrowIfNull(products);
        ArgumentNullException.ThrowIfNull(place);
        return place.Kind is PlaceKind.Pallet or PlaceKind.BulkLoad ? products.FirstOrDefault(p => (p.Kind == PackKind.Bulk) == (place.Kind == PlaceKind.BulkLoad)
            && p.Flour.Equals(place.Material, StringComparison.OrdinalIgnoreCase) && (p.Kind == PackKind.Bulk || p.PackedAs == place.Name)) : null;
    }

    private static IEnumerable<string> GtinFaults(string text, string of) => text.Length > 0 && !Gtin.TryParse(text, out _, out var refusal) ? [$"Number of the {of}: {refusal}"] : [];

    private IEnumerable<string> BulkFaults() => PackGrams != 0 || PerCase != 0 || PerPallet != 0 ? ["Bulk flour has no packs: leave the mass of a pack, the case and the pallet at 0."] : [];

    private IEnumerable<string> PackFaults()
    {
        if (PackGrams is <= 0 or > MostGrams)
        {
            yield return $"A pack holds more than 0 and at most {MostGrams / 1000} kg; got {Pack.Kilograms} kg.";
        }

        if (PerPallet < 1 || PackGrams * PerPallet > MostGrams)
        {
            yield return $"A pallet carries at least one pack and at most {MostGrams / 1000} kg; got {PerPallet} packs.";
        }

        // The last case of a pallet may be short: a pallet is made up by mass.
        if (PerCase < 0 || PerCase > PerPallet)
        {
            yield return $"A case holds 0 packs or more, and no more than a pallet carries; got {PerCase}.";
        }
    }
}
