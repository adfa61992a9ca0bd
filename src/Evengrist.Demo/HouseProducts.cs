using Evengrist.Packing.Codes;
using Evengrist.Packing.Products;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>What the demonstration mill packs and loads; all invented. The trade item numbers stand behind 952, which GS1 keeps for demonstrations and examples, so that none is anybody's.</summary>
public static class HouseProducts
{
    private const string Keeper = "Greta Sowden", Approver = "Dr Anya Holt";
    private static readonly Instant Approved = MillCalendar.At(new LocalDate(2025, 6, 23), 9, 30);
    private static readonly CompanyPrefix Prefix = CompanyPrefix.TryParse("9521234", out var prefix, out _) ? prefix : throw new InvalidOperationException("The demonstration's prefix cannot be read.");

    /// <summary>The products. Whole wheat for households is new: its label is not approved yet.</summary>
    public static IReadOnlyList<Product> All { get; } =
    [
        Bag("WB", "White bread flour", 201, 12), Bag("AP", "All-purpose flour", 202, 12), Bag("HG", "High gluten flour", 203, 12), Bag("PA", "Pastry flour", 204, 12), Bag("WW", "Whole wheat flour", 205, 6), Bag("C1", "First clear flour", 206, 12),
        Household("WB", "White bread flour for households", 211, 12), Household("AP", "All-purpose flour for households", 212, 12), Household("WW", "Whole wheat flour for households", 213, 6) with { Label = null },
        new("SM-1", "Pancake mix with soy, 1 kg", "SM", PackKind.Retail, 1_000)
        {
            PerCase = 12, PerPallet = 1000, TareGrams = 14, PackedAs = "12 × 1 kg, contains soy", PackGtin = Number(221), CaseGtin = Number(221, 1), ShelfMonths = 9, Allergens = [Product.Wheat, "soy"], Enriched = true, Label = Label("2"),
        },
        Loose("WB", "White bread flour, loose"), Loose("HG", "High gluten flour, loose"), Loose("PA", "Pastry flour, loose"), Loose("C2", "Second clear, loose"),
        Loose("BR", "Bran, loose"), Loose("WF", "Wheatfeed, loose"), Loose("GM", "Germ, loose") with { ShelfMonths = 1 }, Loose("SC", "Screenings, loose"),
    ];

    /// <summary>Keeps them, as a person would.</summary>
    public static void Keep(Mill mill)
    {
        foreach (var product in All)
        {
            if (Products.Keep(mill, product, Keeper).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }
    }

    private static Product Bag(string flour, string name, int item, int months) => new($"{flour}-25", $"{name}, 25 kg", flour, PackKind.Bag, 25_000)
    {
        PerPallet = 40, TareGrams = 180, PackedAs = "40 × 25 kg", PackGtin = Number(item), ShelfMonths = months, Enriched = flour == "AP", Label = Label("3"),
    };

    private static Product Household(string flour, string name, int item, int months) => new($"{flour}-2", $"{name}, 2 kg", flour, PackKind.Retail, 2_000)
    {
        PerCase = 8, PerPallet = 500, TareGrams = 22, PackedAs = "2 kg, 8 to a bale", PackGtin = Number(item), CaseGtin = Number(item, 1), ShelfMonths = months, Enriched = flour == "AP", Label = Label("5"),
    };

    private static Product Loose(string what, string name) => new($"{what}-BULK", name, what, PackKind.Bulk) { ShelfMonths = 6, Label = Label("1") };

    private static ApprovedLabel Label(string version) => new(version, Approver, Approved);

    private static string Number(int item, int indicator = 0) => Prefix.TradeItem(item, indicator).Digits;
}
