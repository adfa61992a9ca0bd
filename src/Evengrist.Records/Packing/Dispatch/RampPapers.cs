using Evengrist.Laboratory.Lots;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Records.Laboratory;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>What the papers say at the ramp, read once for however many loads and packages are looked at.</summary>
public sealed class RampPapers
{
    private readonly Dictionary<string, ConsigneeCard> cards;
    private readonly Lazy<(Dictionary<string, PackingOrder> Orders, Dictionary<string, Product> Products)> orders;

    private RampPapers(Mill mill)
    {
        (Settings, Rules, Release, Loads) = (mill.Settings, KeepDispatchRules.Newest(mill).Rules, KeepReleaseRules.Newest(mill).Rules, DispatchShelf.All(mill));
        (Decisions, Products) = (LotDecisions.All(mill), [.. Packing.Products.Newest(mill).Select(p => p.Product)]);
        cards = Consignees.All(mill).ToDictionary(c => c.Code, StringComparer.OrdinalIgnoreCase);
        orders = new(() => (PackingOrders.Newest(mill).ToDictionary(k => k.Order.Number, k => k.Order, StringComparer.OrdinalIgnoreCase), Products.ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase)));
    }

    /// <summary>What the mill says about itself.</summary>
    public MillSettings Settings { get; }

    /// <summary>The rules of dispatch.</summary>
    public DispatchRules Rules { get; }

    /// <summary>The rules of lots.</summary>
    public ReleaseRules Release { get; }

    /// <summary>Every load, by day and number.</summary>
    public IReadOnlyList<DispatchLoad> Loads { get; }

    /// <summary>Every decision about a lot, by lot and version.</summary>
    public IReadOnlyList<LotDecision> Decisions { get; }

    /// <summary>The products.</summary>
    public IReadOnlyList<Product> Products { get; }

    /// <summary>Reads them.</summary>
    public static RampPapers Of(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new(mill);
    }

    /// <summary>The card of a consignee; null where none is kept.</summary>
    public ConsigneeCard? CardOf(string consignee) => cards.GetValueOrDefault(consignee);

    /// <summary>An order that a load names, with what is kept of it.</summary>
    public NamedOrder Named(string number)
    {
        var order = orders.Value.Orders.GetValueOrDefault(number);
        return new(number) { Order = order, Product = order is null ? null : orders.Value.Products.GetValueOrDefault(order.Product) };
    }

    /// <summary>A load and those that name an order of it, or are joined to it by orders in turn.</summary>
    public IReadOnlyList<DispatchLoad> Joined(DispatchLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        HashSet<string> numbers = new(LoadAgainstOrders.Numbers(load), StringComparer.OrdinalIgnoreCase);
        List<DispatchLoad> joined = [load], rest = [.. Loads.Where(l => l.Orders.Count > 0 && l.Away is null && !l.Number.Equals(load.Number, StringComparison.OrdinalIgnoreCase))];
        while (rest.FindIndex(l => LoadAgainstOrders.Numbers(l).Any(numbers.Contains)) is >= 0 and var at)
        {
            joined.Add(rest[at]);
            numbers.UnionWith(LoadAgainstOrders.Numbers(rest[at]));
            rest.RemoveAt(at);
        }

        return joined;
    }
}
