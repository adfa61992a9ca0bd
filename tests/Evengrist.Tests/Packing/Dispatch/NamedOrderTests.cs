using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Tests.Packing.Dispatch;

/// <summary>Orders a load names, and pallets beside them; cases are derived by hand from the rules of docs/model/dispatch.md.</summary>
public sealed class NamedOrderTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 1, 14, 12, 0);
    private static readonly DispatchLoad Load = new("D-1", new LocalDate(2026, 1, 14), "C6");
    private static readonly Product Bag = new("PA-25", "Pastry flour", "PA", PackKind.Bag, 25_000) { PackedAs = "40 × 25 kg" };

    private static NamedOrder Kept(string customer = "C6", bool off = false) => new("SO-1") { Order = new("SO-1", customer, "PA-25", 40, OrderUnit.Packs, Noon, Noon) { IsCancelled = off, Reason = off ? "x" : "" }, Product = Bag };

    private static RampPackage Pallet(string product, string flour, string goesAs = "") => new("P-1") { Kind = PlaceKind.Pallet, Product = product, Flour = flour, As = goesAs };

    [Fact]
    public void Of_Orders_KeptOfTheConsignee_SaysNothing_OthersAreNamed()
    {
        Assert.Empty(NamedOrderModel.Of(Load, [Kept(), Kept("c6")]));
        Assert.Empty(NamedOrderModel.Of(Load, []));
        Assert.Equal([FindingWeight.Ask, FindingWeight.Ask, FindingWeight.Ask, FindingWeight.Stop], NamedOrderModel.Of(Load, [new("X-9"), Kept("C5"), Kept(""), Kept(off: true)]).Select(f => f.Weight));
        Assert.Contains("No order X-9 is kept", NamedOrderModel.Of(Load, [new("X-9")])[0].Words, StringComparison.Ordinal);
        Assert.Contains("is of C5, and the load goes to C6", NamedOrderModel.Of(Load, [Kept("C5")])[0].Words, StringComparison.Ordinal);
        Assert.Contains("called off", NamedOrderModel.Of(Load, [Kept("C5", off: true)])[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Package_OfAnotherProduct_IsAskedAbout_UnlessAnOrderIsNotKept()
    {
        Assert.Empty(NamedOrderModel.Of(Pallet("PA-25", "PA"), [Kept()]));
        Assert.Contains("P-1 is WB-25; wanted are PA-25 (SO-1)", Assert.Single(NamedOrderModel.Of(Pallet("WB-25", "WB"), [Kept()])).Words, StringComparison.Ordinal);
        Assert.Equal(FindingWeight.Ask, NamedOrderModel.Of(Pallet("PA-2", "PA"), [Kept()])[0].Weight);
        Assert.Empty(NamedOrderModel.Of(Pallet("WB-25", "WB"), [Kept(), new("X-9")]));
        Assert.Empty(NamedOrderModel.Of(Pallet("WB-25", "WB"), [Kept(off: true)]));
        // A pack that is no product, and one released as another flour, are held against the flour.
        Assert.Empty(NamedOrderModel.Of(Pallet("", "PA"), [Kept()]));
        Assert.Empty(NamedOrderModel.Of(Pallet("WB-25", "WB", "PA"), [Kept()]));
        Assert.Single(NamedOrderModel.Of(Pallet("", "WB"), [Kept()]));
    }
}
