using Evengrist.Ledger;
using Evengrist.Packing.Products;

namespace Evengrist.Tests.Packing.Products;

public sealed class ProductTests
{
    // The number is derived: 952 123 400201 with its check digit.
    private static readonly Product Bag = new("WB-25", "White bread flour, 25 kg", "WB", PackKind.Bag, 25_000) { PerPallet = 40, TareGrams = 180, PackedAs = "40 × 25 kg", PackGtin = "9521234002017" };

    [Fact]
    public void Pallet_FortyBags_IsATonne() => Assert.Equal((1000m, 25m), (Bag.Pallet.Kilograms, Bag.Pack.Kilograms));

    [Fact]
    public void Json_Product_ComesBack()
    {
        var mix = Bag with { Allergens = ["wheat", "soy"], Label = new("3", "Dr Anya Holt", NodaTime.Instant.FromUtc(2025, 6, 23, 15, 30)) };
        Assert.True(Product.TryRead(mix.ToJson(), out var read, out _));
        Assert.Equal(mix.ToJson(), read.ToJson());
        Assert.Equal(["soy"], read.AllergensBeyondWheat);
        Assert.False(Product.TryRead("""{"code":"X","name":"x","flour":"WB","kind":"Sack"}""", out _, out var faults));
        Assert.Single(faults);
    }

    public static TheoryData<Product, string> Wrong() => new()
    {
        { Bag with { Code = "a b" }, "letters, digits" },
        { Bag with { Flour = " " }, "which flour" },
        { Bag with { PackGrams = 0 }, "more than 0" },
        { Bag with { PerPallet = 0 }, "at least one pack" },
        { Bag with { PerPallet = 81 }, "at most 2000 kg" },
        { Bag with { PerCase = 41 }, "no more than a pallet" },
        { Bag with { ShelfMonths = 0 }, "1 to 60 months" },
        { Bag with { Allergens = ["soy"] }, "contains wheat" },
        { Bag with { PackGtin = "9521234002018" }, "Number of the pack" },
        { Bag with { PerCase = 8, CaseGtin = "9521234002017" }, "same number" },
        { Bag with { CaseGtin = "19521234002014" }, "no packs in a case" },
        { Bag with { Kind = PackKind.Bulk }, "no packs" },
        { Bag with { Label = new("3", "", default) }, "named person" },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Faults_Wrong_IsNamed(Product product, string words) => Assert.Contains(words, Assert.Single(product.Faults()), StringComparison.Ordinal);

    [Fact]
    public void On_PlaceOfTheLedger_FindsFlourInItsPack()
    {
        Product[] all = [Bag, Bag with { Code = "WB-2", PackGrams = 2000, PerPallet = 500, PackedAs = "2 kg, 8 to a bale" }, new("WB-BULK", "Loose", "WB", PackKind.Bulk)];
        Place Of(PlaceKind kind, string name, string flour = "WB") => new(new PlaceId(1), "P", kind, name, flour);
        Assert.Equal("WB-2", Product.On(all, Of(PlaceKind.Pallet, "2 kg, 8 to a bale"))?.Code);
        Assert.Equal("WB-BULK", Product.On(all, Of(PlaceKind.BulkLoad, "bulk"))?.Code);
        Assert.Null(Product.On(all, Of(PlaceKind.Pallet, "40 × 25 kg", "AP")));
        Assert.Null(Product.On(all, Of(PlaceKind.FlourBin, "40 × 25 kg")));
    }
}
