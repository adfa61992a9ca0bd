using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>Orders and the loads that name them, joined by number; case does not matter.</summary>
public static class NamedOrders
{
    /// <summary>The loads that name an order, by day and number.</summary>
    public static IReadOnlyList<DispatchLoad> Loads(Mill mill, string order)
    {
        ArgumentNullException.ThrowIfNull(order);
        return [.. DispatchShelf.All(mill).Where(l => l.Orders.Any(n => n.Trim().Equals(order.Trim(), StringComparison.OrdinalIgnoreCase)))];
    }
}
