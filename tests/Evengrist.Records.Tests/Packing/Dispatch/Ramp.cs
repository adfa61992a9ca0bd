using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Packing.Dispatch;

/// <summary>A ramp with six pallets of one lot of WB that was released, one pallet of a mix with soy, and a bakery; invented.</summary>
internal static class Ramp
{
    public static readonly Instant Packed = SmallMill.Morning + Duration.FromHours(1), Noon = SmallMill.Morning + Duration.FromHours(6);

    public static readonly LocalDate Day = new(2026, 7, 1);

    public static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record(
            [
                new OpenPlace("gain", "GAIN", PlaceKind.Gain), new OpenPlace("fb", "FB1", PlaceKind.FlourBin, Material: "WB"), new OpenPlace("cu", "BAKERY", PlaceKind.Customer, "Small bakery"), new OpenPlace("cu2", "OTHER", PlaceKind.Customer),
                new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), SmallMill.Morning),
                .. Enumerable.Range(1, 6).SelectMany(n => new Draft[] { new OpenPlace($"p{n}", $"P{n}", PlaceKind.Pallet, "40 × 25 kg", "WB"), new Move($"m{n}", "FB1", $"P{n}", Mass.FromTonnes(1m), Packed) }),
                new OpenPlace("ps", "SM1", PlaceKind.Pallet, "12 × 1 kg", "SM"), new Move("ms", "FB1", "SM1", Mass.FromTonnes(1m), Packed), new OpenPlace("pe", "EMPTY", PlaceKind.Pallet, Material: "WB"),
                new OpenPlace("bl", "B1", PlaceKind.BulkLoad, "bulk", "WB"), new Move("mb", "FB1", "B1", Mass.FromTonnes(20m), Packed),
            ],
            "Ada", "test");
        KeepReleaseRules.Keep(mill, new ReleaseRules(1, 0, ["Ada"]), "Ada");
        Assert.Empty(new DecideLot("WB-260701", LotVerdict.Release, "good", Packed + Duration.FromHours(1)).In(mill, "Ada").Faults);
        Assert.Empty(Products.Keep(mill, new Product("SM-1", "Mix with soy", "SM", PackKind.Retail, 1000) { PerPallet = 1000, PackedAs = "12 × 1 kg", Allergens = [Product.Wheat, "soy"] }, "Ada").Faults);
        Assert.Empty(Products.Keep(mill, new Product("WB-25", "White bread", "WB", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg", ShelfMonths = 12 }, "Ada").Faults);
        Assert.Empty(Consignees.Keep(mill, new ConsigneeCard("bakery", "Small bakery") { LeastDaysLeft = 90 }, "Ada").Faults);
        return mill;
    }

    public static DispatchLoad Plan(Mill mill, string number = "D-1", bool tanker = false) =>
        DispatchShelf.Plan(mill, new DispatchLoad(number, Day, "BAKERY") { Trailer = "T 7", IsTanker = tanker, Planned = [new("WB", tanker ? 1 : 2)] }, "Ben") is { Load: { } load } ? load : throw new InvalidOperationException("Not planned.");

    public static Act By(string who, string reason = "", double hours = 0) => new(who, Noon + Duration.FromHours(hours), reason);

    public static LoadAnswer Scan(Mill mill, string code, string number = "D-1", string reason = "", string by = "Ben") => new ScanPackage(number, code).In(mill, By(by, reason));

    /// <summary>Every point good, the last load flour, sealed with 4711.</summary>
    public static void Ready(Mill mill, string number = "D-1")
    {
        var rules = KeepDispatchRules.Newest(mill).Rules;
        foreach (var point in rules.PointsOf(DispatchShelf.Find(mill, number)!))
        {
            Done(DispatchShelf.Change(mill, number, "Ben", l => LoadActs.Answer(l, point.Code, true, rules, By("Ben"))));
        }

        Done(DispatchShelf.Change(mill, number, "Ben", l => LoadActs.Ask(l, "flour", "", null, By("Ben"))));
        Done(DispatchShelf.Change(mill, number, "Ben", l => LoadActs.Seal(l, ["4711"], By("Ben"))));
    }

    public static DispatchLoad Done(LoadAnswer answer)
    {
        Assert.True(answer.Load is not null, string.Join(" ", answer.Findings.Select(f => f.Words)));
        return answer.Load;
    }

    public static void Stopped(LoadAnswer answer, string says)
    {
        Assert.Null(answer.Load);
        Assert.Contains(answer.Findings, f => f.Weight != FindingWeight.Caution && f.Words.Contains(says, StringComparison.Ordinal));
    }
}
