using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Packing.Orders;

/// <summary>Orders against packages; cases are derived by hand.</summary>
public sealed class OrderStandingTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 1, 14, 12, 0);
    private static readonly Product Bag = new("WB-25", "Bread flour", "WB", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg", Label = new("1", "A", Noon) };

    private static PackingOrder Order(string number, decimal packs, int dueHours, string customer = "C1", bool stock = false) => new(number, customer, "WB-25", packs, OrderUnit.Packs, Noon + Duration.FromHours(dueHours), Noon, stock);

    private static OrderPackage Pallet(string code, int hours, string? to = null, bool held = false) => new(code, "WB-25", Mass.FromTonnes(1), Noon + Duration.FromHours(hours), to, held);

    [Fact]
    public void Of_Packages_ServeTheOrderDueFirst_ItsOwnCustomerBeforeStock()
    {
        var standings = OrderStanding.Of([Order("late", 80, 20), Order("early", 60, 10)], [Bag], [Pallet("1", 1), Pallet("2", 2, "C1"), Pallet("3", 3, "C2"), Pallet("4", -1), Pallet("5", 4, held: true)], new HashSet<string> { "late" });
        Assert.Equal(["early", "late"], standings.Select(s => s.Order.Number));
        // 60 bags are 1.5 t: one tonne went to the customer, half of the tonne that stands serves it; the rest of that pallet is stock.
        Assert.Equal((1.5m, 1m, 0.5m, OrderState.Packed), (standings[0].Wanted.Tonnes, standings[0].Shipped.Tonnes, standings[0].Standing.Tonnes, standings[0].State));
        Assert.Equal((2m, 0m, 2m, OrderState.Planned), (standings[1].Wanted.Tonnes, standings[1].Standing.Tonnes, standings[1].Remaining.Tonnes, standings[1].State));
    }

    [Fact]
    public void Of_WhatWasPackedBefore_ServesOnlyAnOrderFromStock()
    {
        Assert.Equal(OrderState.Open, OrderStanding.Of([Order("a", 40, 1)], [Bag], [Pallet("1", -1)], new HashSet<string>())[0].State);
        Assert.Equal(OrderState.Packed, OrderStanding.Of([Order("a", 40, 1, stock: true)], [Bag], [Pallet("1", -1)], new HashSet<string>())[0].State);
        Assert.Equal(OrderState.Shipped, OrderStanding.Of([Order("a", 40, 1)], [Bag], [Pallet("1", 1, "c1")], new HashSet<string>())[0].State);
        Assert.Equal((OrderState.Cancelled, Mass.Zero), OrderStanding.Of([Order("a", 40, 1) with { IsCancelled = true, Reason = "x" }], [Bag], [], new HashSet<string>())[0] is var off ? (off.State, off.Remaining) : default);
    }

    [Fact]
    public void Wanted_Kilograms_AreMadeUpToWholePacks() => Assert.Equal((1025m, 1000m), (new PackingOrder("a", "", "WB-25", 1001, OrderUnit.Kilograms, Noon, Noon).Wanted(Bag).Kilograms, new PackingOrder("a", "", "WB-25", 1000, OrderUnit.Kilograms, Noon, Noon).Wanted(Bag).Kilograms));

    [Fact]
    public void Faults_BadOrders_AreNamed()
    {
        Assert.Contains("above 0", Assert.Single(Order("a", -4, 1).Faults()), StringComparison.Ordinal);
        Assert.Contains("whole", Assert.Single(Order("a", 1.5m, 1).Faults()), StringComparison.Ordinal);
        Assert.Contains("number", Assert.Single(Order("a/b", 1, 1).Faults()), StringComparison.Ordinal);
        Assert.Contains("no product", Assert.Single(Order("a", 1, 1).Against(null, true)), StringComparison.Ordinal);
        Assert.Contains("no customer", Assert.Single(Order("a", 1, 1).Against(Bag, false)), StringComparison.Ordinal);
        Assert.Contains("loose", Assert.Single(Order("a", 1, 1).Against(new Product("WB-BULK", "x", "WB", PackKind.Bulk), true).Take(1)), StringComparison.Ordinal);
        Assert.Equal(2, Order("a", 1, -1).Warnings(Bag with { Label = null }, Noon).Count);
    }
}
