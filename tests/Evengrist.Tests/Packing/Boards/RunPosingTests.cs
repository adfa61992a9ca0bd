using Evengrist.Packing.Boards;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Packing.Runs;
using NodaTime;

namespace Evengrist.Tests.Packing.Boards;

/// <summary>Runs posed from records; cases are derived by hand.</summary>
public sealed class RunPosingTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 1, 14, 12, 0);
    private static readonly Product Bread = Of("WB-25", "WB"), Small = Of("WB-2", "WB"), Soy = Of("SM-1", "SM") with { Allergens = ["wheat", "soy"] };

    private static readonly LineBook Book = new(
        [new("L1", 3, [new("WB-25", 20), new("WB-2", 8), new("SM-1", 6, "F-WB")])],
        [new("SM", null, 240) { IsCleanDown = true }, new(null, null, 30)],
        [new([IsoDayOfWeek.Wednesday], "06:00", "14:00", 5)]) { PackChangeMinutes = 25 };

    private static Product Of(string code, string flour) => new(code, code, flour, PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = code, Label = new("1", "A", Start) };

    private static OrderStanding Order(string number, Product product, decimal tonnes, int dueHours) =>
        OrderStanding.Of([new(number, "", product.Code, tonnes * 1000, OrderUnit.Kilograms, Start + Duration.FromHours(dueHours), Start)], [product], [], new HashSet<string>())[0];

    private static RunQuestion Ask(params OrderStanding[] orders) => new(
        Start, orders, [Bread, Small, Soy], Book, [new("L1", "SM-1")], [new("F-WB", "WB", 40, 150, ["L1"])], new([new("F-WB", Start - Duration.FromHours(2), Start + Duration.FromHours(10), 12)]), DateTimeZone.Utc);

    [Fact]
    public void Of_Orders_BecomeRunsWithTheirLinesBinsAndMinutes()
    {
        var spec = RunPosing.Of(Ask(Order("a", Bread, 40, 6), Order("b", Soy, 6, 9))).Spec;
        Assert.Empty(RunOrderFaults.Of(spec));
        Assert.Equal([("a", "WB-25", 120, 360, "F-WB"), ("b", "SM-1", 60, 540, "F-WB")], spec.Runs.Select(r => (r.Code, r.Flour, r.Places.Single().Minutes, r.Due, r.Bin!)));
        Assert.Equal(new Inflow(0, 600, 12), Assert.Single(spec.Bins.Single().Inflows));
        Assert.Equal(new CrewShift(0, 120, 5), spec.Crew[0]); // 14 January 2026 is a Wednesday; the plan begins at 12:00
        Assert.Equal(["soy"], spec.Between("SM-1", "WB-25").Allergens);
        Assert.True(spec.Between("SM-1", "WB-25") is { Minutes: 240, IsCleanDown: true, NeedsSign: true });
        Assert.Equal(30, spec.Between("WB-25", "SM-1").Minutes);
    }

    [Fact]
    public void Of_AnotherPackOfTheSameFlour_TakesAChangeOfPackAlone() =>
        Assert.Equal((25, 0.0), RunPosing.Of(Ask(Order("a", Bread, 4, 6), Order("b", Small, 4, 9))).Spec.Between("WB-25", "WB-2") is var change ? (change.Minutes, change.FlushTonnes) : default);

    [Fact]
    public void Of_WhatCannotRun_IsLeftOutAndSaysWhy()
    {
        var other = Of("HG-25", "HG");
        var posed = RunPosing.Of(Ask(Order("a", Bread with { Label = null }, 4, 6), Order("b", other, 4, 6), Order("c", Small, 4, 24 * 40)));
        Assert.Empty(posed.Spec.Runs);
        Assert.Equal(["no approved label", "No line makes", "days after"], posed.LeftOut.Select(l => new[] { "no approved label", "No line makes", "days after" }.Single(w => l.Why.Contains(w, StringComparison.Ordinal))));
    }

    [Fact]
    public void Of_KeptPlan_LocksWhatIsLockedAndWhatIsUnderWay()
    {
        PlannedRun Kept(string order, string product, int from, int until, bool locked) => new(order, product, "L1", Start + Duration.FromMinutes(from), Start + Duration.FromMinutes(until), 1, Start) { IsLocked = locked };
        var nothing = new PlanFigures(0, 0, 0, 0, 0, 0, []);
        var plan = new PackingPlan(Start - Duration.FromHours(1), [Kept("b", "SM-1", -30, 30, false), Kept("a", "WB-25", 400, 520, true), Kept("c", "WB-2", 600, 700, false)], nothing, nothing, nothing, false, 0, "", 0);
        var runs = RunPosing.Of(Ask(Order("a", Bread, 40, 6), Order("b", Soy, 6, 9), Order("c", Small, 8, 20)) with { Kept = plan }).Spec.Runs;
        Assert.Equal(["a L1 400", "b L1 0", "c"], runs.Select(r => r.Locked is { } held ? $"{r.Code} {held.Line} {held.Start}" : r.Code));
    }

    [Fact]
    public void Level_OfABin_IsWhatLayThereAndCameLessWhatWent()
    {
        var posed = RunPosing.Of(Ask(Order("a", Bread, 40, 6)));
        var plan = PackingPlan.Of(posed, new RunOrderSolved(RunPlan.Of(posed.Spec, [new("L1", 240)]), false, 0, "", TimeSpan.Zero, []));
        Assert.Equal(40 + 24, plan.Level(plan.Bins[0], Start + Duration.FromHours(2)), 9);
        Assert.Equal(40 + 60 - 20, plan.Level(plan.Bins[0], Start + Duration.FromHours(5)), 9); // half of the run of two hours
        Assert.True(PackingPlan.TryRead(plan.ToJson(), out var read, out _));
        Assert.Equal(plan.ToJson(), read.ToJson());
    }
}
