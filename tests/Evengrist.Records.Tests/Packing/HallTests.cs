using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Records.Packing;
using Evengrist.Records.Tests.Stores;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Records.Tests.Packing;

/// <summary>The packing hall from records: a mill reckoned by hand.</summary>
public sealed class HallTests
{
    private static readonly Instant Noon = SmallMill.Morning + Duration.FromHours(6);

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        var drafts = new List<Draft>(SmallMill.Places)
        {
            new OpenPlace("fb", "F-WB", PlaceKind.FlourBin, Material: "WB") { Capacity = Mass.FromTonnes(100) }, new OpenPlace("l", "L1", PlaceKind.PackingLine), new OpenPlace("k", "C1", PlaceKind.Customer), new Connect("fl", "F-WB", "L1"), new OpenPlace("o", "OPENING", PlaceKind.Opening),
            new Move("m0", "OPENING", "F-WB", Mass.FromTonnes(50), SmallMill.Morning), new Move("m1", "F-WB", "L1", Mass.FromTonnes(4), Noon - Duration.FromHours(4), Noon),
        };
        for (var i = 1; i <= 3; i++)
        {
            drafts.Add(new OpenPlace($"p{i}o", $"P{i}", PlaceKind.Pallet, i == 3 ? "soy" : "40 × 25 kg", i == 3 ? "SM" : "WB"));
            drafts.Add(new Move($"p{i}m", "L1", $"P{i}", Mass.FromTonnes(1), Noon - Duration.FromHours(4 - i)));
        }

        mill.Record(drafts, "Tester", "test");
        Product[] products = [Of("WB-25", "WB", "40 × 25 kg"), Of("SM-1", "SM", "soy") with { Allergens = ["wheat", "soy"] }];
        Assert.All(products, p => Assert.Empty(Products.Keep(mill, p, "Tester").Faults));
        KeepLineBook.Keep(mill, new LineBook([new("L1", 1, [new("WB-25", 10), new("SM-1", 5, "F-WB")])], [new("SM", null, 60) { IsCleanDown = true }], []) { Signers = ["Tester"] }, "Tester");
        return mill;
    }

    private static Product Of(string code, string flour, string packed) => new(code, code, flour, PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = packed, Label = new("1", "Tester", SmallMill.Morning) };

    private static PackingOrder Order(string number, decimal tonnes = 10) => new(number, "C1", "WB-25", tonnes * 1000, OrderUnit.Kilograms, Noon + Duration.FromHours(8), SmallMill.Morning);

    [Theory, OnSqlite, OnPostgres]
    public void Orders_KeptCorrectedAndImported_LoseNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(1, PackingOrders.Keep(mill, Order("a"), "Tester", 0).Kept!.Version);
        Assert.Contains("kept already", Assert.Single(PackingOrders.Keep(mill, Order("A"), "Tester", 0).Faults, f => !f.StartsWith("Say why", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("Say why", Assert.Single(PackingOrders.Keep(mill, Order("a", 12), "Tester", 1).Faults), StringComparison.Ordinal);
        Assert.Equal(2, PackingOrders.Keep(mill, Order("a", 12) with { Reason = "more" }, "Tester", 1).Kept!.Version);
        var file = new ImportOrders([(2, Order("b")), (3, Order("c", 3))]);
        Assert.Equal((2, 0), file.In(mill, "Tester"));
        Assert.Equal((0, 2), file.In(mill, "Tester"));
        Assert.Equal((0, 1), new ImportOrders([(2, Order("B"))]).In(mill, "Tester")); // the same number under another case is no second order
        Assert.Contains("something else", Assert.Single(new ImportOrders([(2, Order("b", 99))]).Faults(mill)).Fault, StringComparison.Ordinal);
        Assert.Null(new ImportOrders([(2, Order("d")), (3, Order("e") with { Product = "NONE" })]).In(mill, "Tester"));
        Assert.Equal(["a", "b", "c"], PackingOrders.Newest(mill).Select(o => o.Order.Number));
        // P1 and P2 stand: two tonnes serve the order due first by its number.
        Assert.Equal([("a", 2m, 10m), ("b", 0m, 10m), ("c", 0m, 3m)], HallRecords.Standings(mill, Noon).Select(s => (s.Order.Number, s.Standing.Tonnes, s.Remaining.Tonnes)));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Order_RaisedAfterPlanning_IsToldAsNotPlanned(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        PackingOrders.Keep(mill, Order("a"), "Tester", 0);
        Assert.Equal((8m, 8m, false), HallRecords.Standings(mill, Noon)[0] is var open ? (open.Remaining.Tonnes, open.NotPlanned.Tonnes, open.IsPlannedShort) : default); // 2 t stand, no plan has the rest
        Assert.NotNull(PackingPlans.Keep(mill, new PlanRuns(Noon).In(mill).Plan!, "to begin with", "Tester").Kept);
        Assert.False(HallRecords.Standings(mill, Noon)[0].IsPlannedShort);
        Assert.Equal(2, PackingOrders.Keep(mill, Order("a", 15) with { Reason = "more" }, "Tester", 1).Kept!.Version);
        Assert.Equal((13m, 5m, true), HallRecords.Standings(mill, Noon)[0] is var more ? (more.Remaining.Tonnes, more.NotPlanned.Tonnes, more.IsPlannedShort) : default);
        // A pallet of the run comes off the line: what was raised is still in no run.
        mill.Record([new OpenPlace("p4o", "P4", PlaceKind.Pallet, "40 × 25 kg", "WB"), new Move("p4m", "L1", "P4", Mass.FromTonnes(1), Noon + Duration.FromMinutes(10))], "Tester", "test");
        Assert.Equal((12m, 5m), HallRecords.Standings(mill, Noon + Duration.FromMinutes(20))[0] is var later ? (later.Remaining.Tonnes, later.NotPlanned.Tonnes) : default);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Plan_AfterSoy_WaitsForACleanDownThatIsSigned(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        PackingOrders.Keep(mill, Order("a"), "Tester", 0);
        Assert.Equal("SM-1", HallRecords.LastOn(mill, "L1", Noon));
        var plan = new PlanRuns(Noon).In(mill).Plan!;
        Assert.Equal(("a", 60, "soy"), (plan.Runs[0].Order, plan.Runs[0].ChangeMinutes, plan.Runs[0].ToSign.Single()));
        Assert.Contains("may not sign", Assert.Single(CleanDowns.Sign(mill, "L1", "swept", 30, Noon, "Stranger").Faults), StringComparison.Ordinal);
        Assert.NotNull(CleanDowns.Sign(mill, "L1", "swept and vacuumed", 50, Noon, "Tester").Signed);
        Assert.Equal(0, new PlanRuns(Noon).In(mill).Plan!.Runs[0].ChangeMinutes);
        // What the laboratory finds afterwards undoes it.
        Assert.NotNull(CleanDowns.Verify(mill, CleanDowns.All(mill)[0].Code, false, "swab: soy", Noon, "Tester").Verified);
        Assert.Equal(60, new PlanRuns(Noon).In(mill).Plan!.Runs[0].ChangeMinutes);
        Assert.Null(new PlanRuns(Noon) { MayCleanDown = false }.In(mill).Plan);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Plan_KeptAndLocked_StaysWhenARushOrderComes(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        PackingOrders.Keep(mill, Order("a"), "Tester", 0);
        Assert.Contains("Say why", Assert.Single(PackingPlans.Keep(mill, new PlanRuns(Noon).In(mill).Plan!, "", "Tester").Faults), StringComparison.Ordinal);
        Assert.Equal(1, PackingPlans.Keep(mill, new PlanRuns(Noon).In(mill).Plan!, "the morning's", "Tester", 0).Kept!.Version);
        Assert.Equal(2, PackingPlans.Lock(mill, "a", true, Noon, "Tester").Kept!.Version);
        Assert.NotEmpty(PackingPlans.Lock(mill, "nobody", true, Noon, "Tester").Faults);
        var from = PackingPlans.InForce(mill, Noon)!.Plan.Runs[0].From;
        var rush = new PlanRuns(Noon) { Supposed = Order("rush", 5) with { Due = Noon + Duration.FromHours(1), Priority = 9 } }.In(mill).Plan!;
        Assert.Equal(from, rush.Runs.Single(r => r.Order == "a").From);
        Assert.True(rush.Runs.Single(r => r.Order == "rush").From >= rush.Runs.Single(r => r.Order == "a").Until);
        Assert.Equal(OrderState.Planned, HallRecords.Standings(mill, Noon)[0].State);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Packaging_OfALot_LeadsToThePalletsPackedMeanwhile(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var use = new PackagingUse(PackagingKind.Bags, "KB-1", "Sacks", "L1", "", Noon - Duration.FromHours(5));
        Assert.Empty(PackagingUses.Load(mill, use, "Tester").Faults);
        Assert.NotNull(PackagingUses.TakeOff(mill, "L1", "kb-1", Noon - Duration.FromHours(2), "Tester"));
        Assert.Null(PackagingUses.TakeOff(mill, "L1", "KB-1", Noon, "Tester"));
        Assert.Equal(["P1"], PackagingUses.PalletsOf(mill, "KB-1", Noon).Select(p => p.Pallet.Code)); // P2 came off at the very moment the lot did
        Assert.Single(PackagingUses.PackagingOf(mill, "L1", Noon - Duration.FromHours(3)));
        Assert.Empty(PackagingUses.PackagingOf(mill, "L1", Noon - Duration.FromHours(2)));
        Assert.NotEmpty(PackagingUses.Load(mill, use with { Line = "L9" }, "Tester").Faults);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Packaging_OfALot_StartsARecallOfThePalletsPackedMeanwhile(Store store)
    {
        // Derived by hand: P1, P2 of WB and P3 of SM come off L1 three, two and one hours before noon; the bags KB-1 lay there until half an hour before, for WB-25 alone.
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var bags = new PackagingUse(PackagingKind.Bags, "KB-1", "Sacks", "L1", "WB-25", Noon - Duration.FromHours(5), Noon - Duration.FromHours(0.5));
        Assert.Empty(PackagingUses.Load(mill, bags, "Tester").Faults);
        Assert.Empty(PackagingUses.Load(mill, new PackagingUse(PackagingKind.Film, "VF-1", "Film", "L1", "", Noon + Duration.FromHours(1)), "Tester").Faults);
        var starts = Starts("packaging kb-1");
        Assert.Equal(["P1", "P2"], starts.Starts.Select(s => s.Place.Code));
        var word = Assert.Single(starts.Words);
        Assert.All(["KB-1", "bags of Sacks", "on L1 for WB-25", "2 pallets"], part => Assert.Contains(part, word, StringComparison.Ordinal));
        Assert.Contains($"from {Local(bags.From)} to {Local(bags.Until!.Value)}", word, StringComparison.Ordinal);
        Assert.Equal(starts.Starts, Starts("KB-1").Starts); // no place has that code
        Assert.Equal(["P2"], Starts("packaging KB-1", Noon - Duration.FromHours(2.5), Noon).Starts.Select(s => s.Place.Code));
        Assert.Contains("No lot of packaging", Assert.Single(Starts("packaging KB-9").Faults), StringComparison.Ordinal);
        Assert.Contains("No lot of packaging", Assert.Single(Starts("packaging VF-1").Faults), StringComparison.Ordinal); // not loaded yet
        Assert.Contains("no pallet was filled", Assert.Single(Starts("packaging KB-1", Noon, Noon + Duration.FromHours(1)).Faults), StringComparison.Ordinal);

        // Two tonnes, whether P1 is named as well or not.
        var both = RecallStarts.Of(mill, [Line("packaging KB-1"), Line("P1")], Noon);
        foreach (var asked in new[] { starts, both })
        {
            var recall = mill.Ask(view => view.Tracer().Recall(new RecallQuestion(asked.Starts) { AsOf = Noon }));
            Assert.Equal(2e6, recall.Traced.Expected, 1.0);
            Assert.Equal(["P1", "P2"], recall.Net(NetKind.Union).Packages.Select(p => p.Place.Code));
        }

        RecallStarts Starts(string text, Instant? from = null, Instant? until = null) => RecallStarts.Of(mill, [Line(text, from, until)], Noon);
        string Local(Instant at) => at.InZone(mill.Settings.Zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture);
        static SuspectLine Line(string text, Instant? from = null, Instant? until = null) => text.StartsWith("packaging ", StringComparison.Ordinal)
            ? new(SuspectKind.Packaging, text["packaging ".Length..], null, from, until) : new(SuspectKind.Code, text, new ScannedKeys(text) { Own = text }, from, until);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Bins_FlowsOfTheLastHours_SayWhenOneIsEmpty(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var bin = Assert.Single(HallRecords.Bins(mill, Noon));
        // 46 t left, one tonne an hour went out each of the last four.
        Assert.Equal((46m, 1.0, 0.0), (bin.Level.Tonnes, bin.OutTonnesPerHour, bin.InTonnesPerHour));
        Assert.Equal(46 * 60, bin.MinutesToEmpty!.Value, 6);
        Assert.Equal(0, bin.MinutesUncertainty!.Value, 6);
        Assert.Null(bin.MinutesToFull);
    }
}
