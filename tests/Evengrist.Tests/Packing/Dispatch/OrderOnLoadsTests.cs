using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Packing.Dispatch;

/// <summary>Loads set against the orders they name; cases are derived by hand from the rule of docs/model/dispatch.md.</summary>
public sealed class OrderOnLoadsTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 1, 14, 12, 0);
    private static readonly Product Bag = new("PA-25", "Pastry flour", "PA", PackKind.Bag, 25_000) { PackedAs = "40 × 25 kg" };

    private static NamedOrder Order(string number, decimal tonnes, int dueHours = 0) => new(number) { Order = new(number, "C6", "PA-25", 1000 * tonnes, OrderUnit.Kilograms, Noon + Duration.FromHours(dueHours), Noon), Product = Bag };

    private static CarryingLoad Load(string number, string orders, int pallets, int? leftAt = null, string product = "PA-25", int returned = 0)
    {
        RampPackage[] packages = [.. Enumerable.Range(1, pallets).Select(n => new RampPackage($"{number}-{n}") { Kind = PlaceKind.Pallet, Product = product, Flour = product[..2], Grams = 1_000_000 })];
        return new(new DispatchLoad(number, new LocalDate(2026, 1, 14), "C6")
        {
            Orders = orders.Split(' '), Packages = [.. packages.Select(p => new LoadedPackage(p.Code, Noon, "Ben"))], Departed = leftAt is { } h ? new Departure(Noon + Duration.FromHours(h), "Ben") : null,
            Returned = [.. packages.Take(returned).Select(p => new ReturnedPackage(p.Code, Noon, "Ben", "torn"))],
        }, packages);
    }

    private static string Row(OrderOnLoads o) => $"{o.Named.Number}: {o.Ordered.Tonnes} ordered, {o.Sent.Tonnes} sent, {o.Here.Tonnes} here, {o.Elsewhere.Tonnes} elsewhere, {o.StillOpen.Tonnes} open, {o.Over.Tonnes} over";

    private static LoadAgainstOrders Of(CarryingLoad load, CarryingLoad[] others, params NamedOrder[] orders) => LoadAgainstOrders.Of(load.Load, [load, .. others], orders);

    [Fact]
    public void Of_OneOrderOverSeveralLoads_AddsWhatWentAndStands()
    {
        var filled = Of(Load("D-3", "SO-1", 5), [Load("D-1", "so-1", 10, leftAt: 1), Load("D-2", "SO-1", 6, leftAt: 2, returned: 2), Load("D-4", "SO-1", 3)], Order("SO-1", 20));
        Assert.Equal("SO-1: 20 ordered, 14 sent, 5 here, 3 elsewhere, 1 open, 0 over", Row(filled.Orders.Single()));
        Assert.Contains("Other open loads carry 3 t", Assert.Single(Said(Load("D-3", "SO-1", 5), filled)).Words, StringComparison.Ordinal);
        // Looked at as it left, only what left before it counts as sent.
        Assert.Equal("SO-1: 20 ordered, 10 sent, 4 here, 0 elsewhere, 6 open, 0 over", Row(Of(Load("D-2", "SO-1", 6, leftAt: 2, returned: 2), [Load("D-1", "SO-1", 10, leftAt: 1), Load("D-3", "SO-1", 5, leftAt: 3)], Order("SO-1", 20)).Orders.Single()));
    }

    [Fact]
    public void Of_MoreThanOrdered_IsAsked_UnlessTheRulesLetItPass()
    {
        var load = Load("D-2", "SO-1", 5);
        var filled = Of(load, [Load("D-1", "SO-1", 18, leftAt: 1)], Order("SO-1", 20));
        Assert.Equal("SO-1: 20 ordered, 18 sent, 5 here, 0 elsewhere, 0 open, 3 over", Row(filled.Orders.Single()));
        var asked = Assert.Single(Said(load, filled));
        Assert.Equal((FindingWeight.Ask, "More than ordered: of 20 t of order SO-1 18 t went before and 5 t stand on this load, 3 t too much. Say why it goes all the same."), (asked.Weight, asked.Words));
        Assert.Equal(FindingWeight.Caution, Assert.Single(NamedOrderModel.With(filled, DispatchRules.Start)).Weight);
        Assert.Empty(Said(load, filled, DispatchRules.Start with { OverPercent = 15 })); // 3 of 20 t are 15 %
        Assert.Single(Said(load, filled, DispatchRules.Start with { OverPercent = 14.9m }));
        // Sent too much before: this load is over by what it carries, no more.
        Assert.Equal(Mass.FromTonnes(2m), Of(Load("D-2", "SO-1", 2), [Load("D-1", "SO-1", 25, leftAt: 1)], Order("SO-1", 20)).Orders.Single().Over);
        Assert.Empty(Said(Load("D-2", "SO-1", 2), Of(Load("D-2", "SO-1", 2), [Load("D-1", "SO-1", 18, leftAt: 1)], Order("SO-1", 20))));
    }

    [Fact]
    public void Of_SeveralOrdersOfOneProduct_AreFilledInTheOrderTheyAreDue()
    {
        var filled = Of(Load("D-1", "SO-2 SO-1", 7), [], Order("SO-2", 4, dueHours: 9), Order("SO-1", 2, dueHours: 3));
        Assert.Equal(["SO-2: 4 ordered, 0 sent, 5 here, 0 elsewhere, 0 open, 1 over", "SO-1: 2 ordered, 0 sent, 2 here, 0 elsewhere, 0 open, 0 over"], filled.Orders.Select(Row));
        // A load that is joined over the second order has taken its room.
        Assert.Equal("SO-1: 2 ordered, 0 sent, 2 here, 0 elsewhere, 0 open, 0 over", Row(Of(Load("D-2", "SO-1", 2), [Load("D-0", "SO-2 SO-1", 3, leftAt: 1)], Order("SO-2", 4, dueHours: 1), Order("SO-1", 2, dueHours: 3)).Orders.Single()));
    }

    [Fact]
    public void Of_WhatNoOrderWants_IsAskedOnce()
    {
        var load = Load("D-1", "SO-1", 2, product: "WB-25");
        var filled = Of(load, [], Order("SO-1", 20));
        Assert.Equal(["D-1-1", "D-1-2"], filled.Unwanted.Select(p => p.Code));
        Assert.Contains("None of the orders wants D-1-1, D-1-2: WB-25", Assert.Single(Said(load, filled)).Words, StringComparison.Ordinal);
        // What was answered when it was scanned is not asked again.
        var answered = load with { Load = load.Load with { Packages = [.. load.Load.Packages.Select(p => p with { Reason = "the bakery rang" })] } };
        Assert.Empty(Said(answered, Of(answered, [], Order("SO-1", 20))));
        // Where an order is not kept nobody knows what it wants.
        var unknown = Load("D-1", "SO-1 X-9", 2, product: "WB-25");
        Assert.Empty(Of(unknown, [], Order("SO-1", 20), new NamedOrder("X-9")).Unwanted);
        Assert.Empty(LoadAgainstOrders.Of(load.Load with { Orders = [] }, [load with { Load = load.Load with { Orders = [] } }], []).Unwanted);
    }

    private static LoadFinding[] Said(CarryingLoad load, LoadAgainstOrders filled, DispatchRules? rules = null) => [.. NamedOrderModel.Of(load.Load, filled, rules ?? DispatchRules.Start).Where(f => !f.Words.StartsWith("No order", StringComparison.Ordinal))];
}
