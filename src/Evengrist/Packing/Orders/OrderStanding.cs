using Evengrist.Packing.Products;
using Evengrist.Quantities;

namespace Evengrist.Packing.Orders;

/// <summary>An order with what the ledger has for it.</summary>
/// <param name="Order">The order.</param>
/// <param name="Product">Its product; null where it is no longer kept.</param>
/// <param name="Wanted">Net mass wanted.</param>
/// <param name="Standing">Net mass of pallets that stand packed and are set against it, at most what is wanted.</param>
/// <param name="Shipped">Net mass that went to the customer and is set against it, at most what is wanted.</param>
/// <param name="IsPlanned">Whether a kept plan has a run of it.</param>
public sealed record OrderStanding(PackingOrder Order, Product? Product, Mass Wanted, Mass Standing, Mass Shipped, bool IsPlanned)
{
    /// <summary>Net mass that the plan in force is still to pack of it; zero where it has no run.</summary>
    public Mass Covered { get; init; }

    /// <summary>Net mass still to be packed for which the plan in force has no run, as where the quantity was raised after planning; all that remains where the plan has none.</summary>
    public Mass NotPlanned => Remaining > Covered ? Remaining - Covered : Mass.Zero;

    /// <summary>Whether the plan in force has a run of it that no longer covers what is still to be packed.</summary>
    public bool IsPlannedShort => State == OrderState.Planned && NotPlanned > Mass.Zero;

    /// <summary>Net mass that stands packed or has gone.</summary>
    public Mass Packed => Standing + Shipped;

    /// <summary>Net mass still to be packed.</summary>
    public Mass Remaining => Order.IsCancelled ? Mass.Zero : Wanted - Standing - Shipped;

    /// <summary>How far it is.</summary>
    public OrderState State => Order.IsCancelled ? OrderState.Cancelled : Wanted > Mass.Zero && Shipped >= Wanted ? OrderState.Shipped : Wanted > Mass.Zero && Remaining <= Mass.Zero ? OrderState.Packed : IsPlanned ? OrderState.Planned : OrderState.Open;

    /// <summary>Sets pallets and loads against orders: of one product, the order due first takes first, what went to its own customer before what stands. A package serves one order; what it holds beyond what that order wants is stock.</summary>
    /// <remarks>A pallet names no order, so this is reckoned, by rule, and says no more than that so much was packed and went. Packages on hold serve none.</remarks>
    /// <param name="orders">The orders.</param>
    /// <param name="products">The products.</param>
    /// <param name="packages">Pallets and loads packed by the moment looked at.</param>
    /// <param name="planned">Numbers of orders that a kept plan has a run of.</param>
    /// <returns>In the order of due times.</returns>
    public static IReadOnlyList<OrderStanding> Of(IReadOnlyList<PackingOrder> orders, IReadOnlyList<Product> products, IReadOnlyList<OrderPackage> packages, IReadOnlySet<string> planned)
    {
        ArgumentNullException.ThrowIfNull(orders);
        ArgumentNullException.ThrowIfNull(packages);
        ArgumentNullException.ThrowIfNull(planned);
        var byCode = products.ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase);
        var left = packages.Where(p => !p.IsHeld).OrderBy(p => p.PackedAt).ThenBy(p => p.Code, StringComparer.Ordinal).GroupBy(p => p.Product, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(g => g.Key, g => g.ToList(), StringComparer.OrdinalIgnoreCase);
        List<OrderStanding> standings = [];
        foreach (var order in orders.OrderBy(o => o.Due).ThenBy(o => o.Number, StringComparer.Ordinal))
        {
            var product = byCode.GetValueOrDefault(order.Product);
            var wanted = product is null ? Mass.Zero : order.Wanted(product);
            var (shipped, standing) = (Mass.Zero, Mass.Zero);
            if (!order.IsCancelled && left.TryGetValue(order.Product, out var there))
            {
                shipped = Take(there, wanted, p => p.To is not null && p.To.Equals(order.Customer, StringComparison.OrdinalIgnoreCase) && (order.FromStock || p.PackedAt >= order.Taken));
                standing = Take(there, wanted - shipped, p => p.To is null && (order.FromStock || p.PackedAt >= order.Taken));
            }

            standings.Add(new OrderStanding(order, product, wanted, standing, shipped, planned.Contains(order.Number)));
        }

        return standings;
    }

    private static Mass Take(List<OrderPackage> there, Mass wanted, Func<OrderPackage, bool> fits)
    {
        var taken = Mass.Zero;
        for (var i = 0; i < there.Count && taken < wanted;)
        {
            if (fits(there[i]))
            {
                taken += there[i].Mass;
                there.RemoveAt(i);
            }
            else
            {
                i++;
            }
        }

        return taken > wanted ? wanted : taken;
    }
}
