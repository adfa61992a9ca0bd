using Evengrist.Quantities;

namespace Evengrist.Packing.Dispatch;

/// <summary>An order that a load names, beside what loads carry of it; net masses.</summary>
/// <param name="Named">The order, with what is kept of it.</param>
/// <param name="Ordered">What is ordered; zero where the order or its product is not kept.</param>
/// <param name="Sent">What went before on loads that name it, less what came back.</param>
/// <param name="Here">What of the load looked at is set against it.</param>
/// <param name="Elsewhere">What stands on other open loads that name it.</param>
public sealed record OrderOnLoads(NamedOrder Named, Mass Ordered, Mass Sent, Mass Here, Mass Elsewhere)
{
    /// <summary>What is ordered and neither went nor stands on this load, at least 0.</summary>
    public Mass StillOpen => Ordered > Sent + Here ? Ordered - Sent - Here : Mass.Zero;

    /// <summary>By how much this load brings it above what is ordered; zero where it does not, or where nobody knows what is ordered.</summary>
    public Mass Over => Ordered > Mass.Zero && Here > Mass.Zero && Sent + Here > Ordered ? Mass.FromGrams(Math.Min(Here.Grams, (Sent + Here - Ordered).Grams)) : Mass.Zero;
}

/// <summary>A load with its packages as they are known.</summary>
/// <param name="Load">The load.</param>
/// <param name="Packages">Its packages.</param>
public sealed record CarryingLoad(DispatchLoad Load, IReadOnlyList<RampPackage> Packages);

/// <summary>A load set against the orders it names. Model: docs/model/dispatch.md.</summary>
/// <param name="Orders">Each order it names, once.</param>
/// <param name="Unwanted">Packages on it whose product none of them wants; empty where an order is not kept, as nobody knows what that wants.</param>
public sealed record LoadAgainstOrders(IReadOnlyList<OrderOnLoads> Orders, IReadOnlyList<RampPackage> Unwanted)
{
    /// <summary>A load that names no order.</summary>
    public static LoadAgainstOrders None { get; } = new([], []);

    /// <summary>The orders, with what is kept of each.</summary>
    public IReadOnlyList<NamedOrder> Named => [.. Orders.Select(o => o.Named)];

    /// <summary>Sets packages against orders: loads that left in the order in which they left, then the load looked at, then other open ones. A package is set against the first order of its load, by due time, that wants its product and has room; where none has, against the last.</summary>
    /// <param name="load">The load looked at.</param>
    /// <param name="loads">It, and the loads that name an order of it or are joined to it by orders in turn; those that left after it do not count.</param>
    /// <param name="orders">Every order that any of them names, with what is kept of each.</param>
    /// <remarks>A pallet names no order: this is reckoned, by rule. What came back is not sent.</remarks>
    public static LoadAgainstOrders Of(DispatchLoad load, IReadOnlyList<CarryingLoad> loads, IReadOnlyList<NamedOrder> orders)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(orders);
        var rows = orders.ToDictionary(o => o.Number, o => new OrderOnLoads(o, o.Order is { } kept && o.Product is { } product ? kept.Wanted(product) : Mass.Zero, Mass.Zero, Mass.Zero, Mass.Zero), StringComparer.OrdinalIgnoreCase);
        List<RampPackage> unwanted = [];
        bool IsIt(CarryingLoad l) => l.Load.Number.Equals(load.Number, StringComparison.OrdinalIgnoreCase);
        foreach (var carrying in loads.Where(l => IsIt(l) || l.Load.Departed is null || load.Departed is null || l.Load.Departed.At <= load.Departed.At).OrderBy(l => l.Load.Departed is { } left && !IsIt(l) ? 0 : IsIt(l) ? 1 : 2).ThenBy(l => l.Load.Departed?.At).ThenBy(l => l.Load.Number, StringComparer.Ordinal))
        {
            OrderOnLoads[] named = [.. Numbers(carrying.Load).Select(n => rows[n]).OrderBy(r => r.Named.Order?.Due).ThenBy(r => r.Named.Number, StringComparer.Ordinal)];
            foreach (var package in carrying.Packages.Where(p => carrying.Load.Returned.All(r => !r.Code.Equals(p.Code, StringComparison.OrdinalIgnoreCase))))
            {
                OrderOnLoads[] fit = [.. named.Select(n => rows[n.Named.Number]).Where(r => r.Named.Order is { IsCancelled: false } && NamedOrderModel.Wants(r.Named, package))];
                if (fit.Length == 0)
                {
                    unwanted.AddRange(IsIt(carrying) && named.Length > 0 && named.All(n => n.Named.Order is not null) ? [package] : Array.Empty<RampPackage>());
                    continue;
                }

                var (row, mass) = (fit.FirstOrDefault(r => r.Sent + r.Here + r.Elsewhere < r.Ordered) ?? fit[^1], Mass.FromGrams(package.Whole));
                rows[row.Named.Number] = IsIt(carrying) ? row with { Here = row.Here + mass } : carrying.Load.Departed is not null ? row with { Sent = row.Sent + mass } : row with { Elsewhere = row.Elsewhere + mass };
            }
        }

        return new([.. Numbers(load).Select(n => rows[n])], unwanted);
    }

    /// <summary>The numbers a load names, each once.</summary>
    public static IEnumerable<string> Numbers(DispatchLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return load.Orders.Select(n => n.Trim()).Distinct(StringComparer.OrdinalIgnoreCase);
    }
}
