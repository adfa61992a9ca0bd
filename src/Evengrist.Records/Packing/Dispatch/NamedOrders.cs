using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Orders and the loads that name them, joined by number; case does not matter.</summary>
public static class NamedOrders
{
    /// <summary>The orders a load names, each once, with what is kept of it.</summary>
    public static IReadOnlyList<NamedOrder> Of(Mill mill, DispatchLoad load)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(load);
        if (load.Orders.Count == 0)
        {
            return [];
        }

        var orders = PackingOrders.Newest(mill).ToDictionary(k => k.Order.Number, k => k.Order, StringComparer.OrdinalIgnoreCase);
        var products = Products.Newest(mill).ToDictionary(k => k.Product.Code, k => k.Product, StringComparer.OrdinalIgnoreCase);
        return [.. load.Orders.Select(n => n.Trim()).Distinct(StringComparer.OrdinalIgnoreCase).Select(n => Named(n, orders.GetValueOrDefault(n), products))];
    }

    /// <summary>The loads that name an order, by day and number.</summary>
    public static IReadOnlyList<DispatchLoad> Loads(Mill mill, string order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return [.. DispatchShelf.All(mill).Where(l => l.Orders.Any(n => n.Trim().Equals(order.Trim(), StringComparison.OrdinalIgnoreCase)))];
    }

    private static NamedOrder Named(string number, PackingOrder? order, Dictionary<string, Product> products) =>
        new(number) { Order = order, Product = order is null ? null : products.GetValueOrDefault(order.Product) };
}
