using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Products;
using Evengrist.Packing.Rework;
using Evengrist.Quantities;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Rework;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Packing.Rework;

/// <summary>A flour with premix, a flour with soy and a plain one, each on pallets; invented.</summary>
public sealed class FeedToteTests
{
    private static readonly Instant Packed = SmallMill.Morning + Duration.FromHours(2), Noon = SmallMill.Morning + Duration.FromHours(6);

    [Theory, OnSqlite]
    public void Fill_OfPallets_KeepsGenealogyAndReckonsWhatIsEnriched(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Assert.Empty(new FillTote("R-1", ["AP1", "WB1"]).In(mill, By("Ada", "torn bags")));
        var seen = ReworkLedger.Find(mill, "r-1", Noon)!;
        Assert.Equal((2_000_000, "torn bags"), (seen.Tote.Grams, seen.Tote.Reason));
        Assert.Equal(["AP", "WB"], seen.Tote.AlsoOf.Prepend(seen.Tote.Flour));
        Assert.Equal(0.5, seen.Tote.MostEnriched, 3); // half of it is AP, whose premix was dosed in full
        Assert.Empty(seen.Tote.Allergens);
        Assert.Equal(Mass.Zero, mill.Ask(v => v.Book.StockOf(v.Book.Named("AP1").Id)));
        Assert.Empty(new FillTote("R-2", ["SM1", "WB2"]).In(mill, By("Ada", "mixed up")));
        Assert.Equal(["soy"], ReworkLedger.Find(mill, "R-2", Noon)!.Tote.Allergens); // one part marks the tote
    }

    [Theory, OnSqlite]
    public void Feed_GoesWhereItMay_AndNeverAnAllergenIntoAFlourWithoutIt(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Assert.Empty(new FillTote("R-1", ["WB1"]).In(mill, By("Ada", "ash above the limit")));
        Assert.Empty(new FillTote("R-2", ["SM1"]).In(mill, By("Ada", "torn packs")));
        Assert.Empty(new FillTote("R-3", ["AP1"]).In(mill, By("Ada", "ash above the limit")));
        Says(new FeedTote("R-2", "F-WB").In(mill, By("Ada", "no other place")), "has soy"); // a reason does not help
        Says(new FeedTote("R-3", "F-WB").In(mill, By("Ada")), "is enriched, and WB is not");
        Says(new FeedTote("R-1", "GAIN").In(mill, By("Ada")), "GAIN is no flour bin");
        Says(new FeedTote("R-9", "F-WB").In(mill, By("Ada")), "There is no tote R-9");
        Says(new FeedTote("R-1", "F-WB").In(mill, By("")), "Say who you are");
        Says(new FeedTote("R-1", "F-WB", Mass.FromTonnes(2m)).In(mill, By("Ada")), "R-1");
        Assert.True(new FeedTote("R-1", "F-WB", Mass.FromKilograms(400m)).In(mill, By("Ada")).Done);
        Assert.Equal(600_000, ReworkLedger.Find(mill, "R-1", Noon)!.Tote.Grams);
        Assert.True(new FeedTote("R-3", "F-WB").In(mill, By("Ada", "the customer takes it enriched")).Done);
        Says(new FeedTote("R-3", "F-WB").In(mill, By("Ada", "again")), "empty");
        Assert.Equal(["F-WB"], ReworkLedger.Find(mill, "R-3", Noon)!.To.Select(m => mill.Ask(v => v.Book[m.To].Code)));
    }

    [Theory, OnSqlite]
    public void Fill_OfWhatMayNotBeRework_IsRefusedWhole_AndWhatWasSaidIsStruck(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var before = mill.Ask(v => v.Book.Last);
        (FillTote Entry, Act Who, string Says)[] refused =
        [
            (new("R-1", ["WB1", "P9"]), By("Ada", "x"), "\"P9\""), (new("R-1", ["WB1", "F-WB"]), By("Ada", "x"), "sweepings never do"), (new("F-WB", ["WB1"]), By("Ada", "x"), "no tote"), (new("R-1", ["WB1"]), By("Ada"), "Say why"),
            (new("R-1", ["WB1"]), By("", "x"), "Say who you are"), (new("R-1", []), By("Ada", "x"), "name the packages"), (new(" ", ["WB1"]), By("Ada", "x"), "Say which tote"),
        ];
        Assert.All(refused, r => Assert.Contains(r.Entry.In(mill, r.Who), f => f.Contains(r.Says, StringComparison.Ordinal)));
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
        Assert.Empty(new FillTote("R-1", ["WB1"]).In(mill, By("Ada", "wrong reason")));
        Assert.NotEmpty(FillTote.Strike(mill, "R-1", By("Ada")));
        Assert.Empty(FillTote.Strike(mill, "R-1", By("Ada", "that was another tote")));
        Assert.Equal("", ReworkLedger.Find(mill, "R-1", Noon)!.Tote.Reason);
        Assert.Empty(new FillTote("R-1", []).In(mill, By("Ada", "specks")));
        Assert.Equal("specks", ReworkLedger.Find(mill, "R-1", Noon)!.Tote.Reason);
    }

    private static Act By(string who, string why = "") => new(who, Noon, why);

    private static void Says((bool Done, IReadOnlyList<LoadFinding> Findings) answer, string words)
    {
        Assert.False(answer.Done);
        Assert.Contains(answer.Findings, f => f.Words.Contains(words, StringComparison.Ordinal));
    }

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record(
            [
                new OpenPlace("g", "GAIN", PlaceKind.Gain), new OpenPlace("enr", "ENR-1", PlaceKind.AdditiveLot, Material: "enrichment premix"), .. new[] { "WB", "AP", "SM" }.Select(f => new OpenPlace($"f{f}", $"F-{f}", PlaceKind.FlourBin, Material: f)),
                new Move("w", "GAIN", "F-WB", Mass.FromKilograms(8000m), SmallMill.Morning), new Move("s", "GAIN", "F-SM", Mass.FromKilograms(8000m), SmallMill.Morning),
                // The premix falls into the flour in the unit, 400 g to a tonne.
                new OpenPlace("u", "U", PlaceKind.MillUnit), new Connect("u>ap", "U", "F-AP"), new Move("a", "GAIN", "U", Mass.FromKilograms(7996.8m), SmallMill.Morning, SmallMill.Morning + Duration.FromHours(1)),
                new Move("e", "ENR-1", "U", Mass.FromKilograms(3.2m), SmallMill.Morning, SmallMill.Morning + Duration.FromHours(1)), new Move("ua", "U", "F-AP", Mass.FromKilograms(8000m), SmallMill.Morning, SmallMill.Morning + Duration.FromHours(1)),
                .. new[] { ("WB1", "WB"), ("WB2", "WB"), ("AP1", "AP"), ("SM1", "SM") }.SelectMany(p => new Draft[] { new OpenPlace(p.Item1, p.Item1, PlaceKind.Pallet, p.Item2 == "SM" ? "12 × 1 kg" : "", p.Item2), new Move($"m{p.Item1}", $"F-{p.Item2}", p.Item1, Mass.FromTonnes(1m), Packed) }),
            ],
            "Ada", "test");
        KeepReworkRules.Keep(mill, ReworkRules.Start with { Premixes = [new("enrichment premix", 400)] }, "Ada");
        Assert.Empty(Products.Keep(mill, new Product("SM-1", "Mix with soy", "SM", PackKind.Retail, 1000) { PerPallet = 1000, PackedAs = "12 × 1 kg", Allergens = [Product.Wheat, "soy"] }, "Ada").Faults);
        return mill;
    }
}
