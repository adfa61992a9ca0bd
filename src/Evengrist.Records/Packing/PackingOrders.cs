using Evengrist.Ledger;
using Evengrist.Packing.Orders;

namespace Evengrist.Records.Packing;

/// <summary>The orders of a mill: papers by number and version, nothing lost.</summary>
public static class PackingOrders
{
    /// <summary>Every order in its newest version, by number.</summary>
    public static IReadOnlyList<KeptOrder> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(PackingOrder.PaperKind).NewestOfEach().Select(Read).OfType<KeptOrder>()];
    }

    /// <summary>All versions of one, the first first; empty where none is kept. Case does not matter.</summary>
    public static IReadOnlyList<KeptOrder> Versions(Mill mill, string number)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(number);
        return [.. mill.Papers(PackingOrder.PaperKind).All().Where(p => p.Code.Equals(number.Trim(), StringComparison.OrdinalIgnoreCase)).Select(Read).OfType<KeptOrder>()];
    }

    /// <summary>Keeps an order as the next version of its number; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="order">What it says.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it follows, so that nobody's is overwritten unseen; 0 for a new one.</param>
    public static (KeptOrder? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, PackingOrder order, string? by, int after)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(order);
        var versions = Versions(mill, order.Number);
        var newest = versions.Count > 0 ? versions[^1].Version : 0;
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. order.Faults(), .. order.Against(Products.Find(mill, order.Product), mill.Ask(view => view.Book.Find(order.Customer) is { Kind: PlaceKind.Customer })),
            .. after != newest ? [after == 0 ? $"The order {order.Number} is kept already in version {newest}: correct that one, or give another number." : $"{order.Number} was changed meanwhile: version {newest} stands. Look at it first."] : Array.Empty<string>(),
            .. newest > 0 && after == newest && !order.IsCancelled && string.IsNullOrWhiteSpace(order.Reason) && versions[^1].Order.ToJson() != order.ToJson() ? ["Say why it changes: the next person reads it beside the version."] : Array.Empty<string>(),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var number = newest > 0 ? versions[^1].Order.Number : order.Number;
        try
        {
            var version = mill.Papers(PackingOrder.PaperKind).KeepNext(number, (order with { Number = number }).ToJson(), by!.Trim());
            return (Read(mill.Papers(PackingOrder.PaperKind).Find(number, version)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"{number} was kept meanwhile by another. Look at it first."]);
        }
    }

    internal static KeptOrder? Read(Paper paper) => PackingOrder.TryRead(paper.Json, out var order, out _) ? new KeptOrder(paper.Version, paper.By, paper.Recorded, order) : null;
}
