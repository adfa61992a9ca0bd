using Evengrist.Quantities;

namespace Evengrist.Packing.Dispatch;

/// <summary>What stands against the orders a load names: none kept, called off, another customer's, another product than the pallet scanned, more on loads than is ordered. Model: docs/model/dispatch.md.</summary>
public static class NamedOrderModel
{
    /// <summary>What is said of the orders themselves. One called off stops; one that is not kept, or is of another customer or the mill's own warehouse, is asked about.</summary>
    /// <param name="load">The load.</param>
    /// <param name="orders">The orders it names, with what is kept of each.</param>
    public static IReadOnlyList<LoadFinding> Of(DispatchLoad load, IReadOnlyList<NamedOrder> orders)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(orders);
        return [.. orders.Select(o => One(load, o)).OfType<LoadFinding>()];
    }

    /// <summary>What is said of a package beside the orders: it is asked about where every order named is kept, and none of them wants its product. Where one is not kept, nobody knows what it wants, and nothing is said.</summary>
    /// <param name="package">The package as it is known now.</param>
    /// <param name="orders">The orders the load names, with what is kept of each.</param>
    public static IReadOnlyList<LoadFinding> Of(RampPackage package, IReadOnlyList<NamedOrder> orders)
    {
        ArgumentNullException.ThrowIfNull(package);
        ArgumentNullException.ThrowIfNull(orders);
        NamedOrder[] wanted = [.. orders.Where(o => o.Order is null or { IsCancelled: false })];
        return wanted.Length == 0 || wanted.Any(o => o.Order is null) || wanted.Any(o => Wants(o, package)) ? []
            : [LoadFinding.Ask($"{package.Code} is {(package.Product.Length > 0 ? package.Product : package.GoesAs)}; wanted are {string.Join(", ", wanted.Select(o => $"{o.Order!.Product} ({o.Order.Number})"))}. The wrong pallet? Say why it goes all the same.")];
    }

    /// <summary>What is said of a load that is about to leave with what it carries of each order: more than is ordered, and a package none of them wants where nothing was said of it when it was scanned, are asked about; open loads that together carry too much are a caution.</summary>
    /// <param name="load">The load.</param>
    /// <param name="filled">It, set against the orders it names.</param>
    /// <param name="rules">The mill's rules.</param>
    public static IReadOnlyList<LoadFinding> Of(DispatchLoad load, LoadAgainstOrders filled, DispatchRules rules)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(filled);
        ArgumentNullException.ThrowIfNull(rules);
        string[] unasked = [.. filled.Unwanted.Select(p => p.Code).Where(c => load.Packages.FirstOrDefault(p => p.Code.Equals(c, StringComparison.OrdinalIgnoreCase)) is { Reason.Length: 0 })];
        return
        [
            .. Of(load, filled.Named),
            .. unasked.Length == 0 ? Array.Empty<LoadFinding>() : [LoadFinding.Ask($"None of the orders wants {string.Join(", ", unasked.Take(Told))}{(unasked.Length > Told ? $" and {unasked.Length - Told} more" : "")}: {string.Join(", ", filled.Unwanted.Select(p => p.Product.Length > 0 ? p.Product : p.GoesAs).Distinct())}. Say why {(unasked.Length == 1 ? "it goes" : "they go")} all the same.")],
            .. filled.Orders.Select(o => Much(o, rules)).OfType<LoadFinding>(),
        ];
    }

    /// <summary>What is said of a package that is scanned where it brings the load above an order: a caution, for the reason is asked when the load leaves.</summary>
    /// <param name="filled">The load with the package, set against the orders it names.</param>
    /// <param name="rules">The mill's rules.</param>
    public static IReadOnlyList<LoadFinding> With(LoadAgainstOrders filled, DispatchRules rules)
    {
        ArgumentNullException.ThrowIfNull(filled);
        ArgumentNullException.ThrowIfNull(rules);
        return [.. filled.Orders.Where(o => IsOver(o, rules)).Select(o => LoadFinding.Caution($"With it {Says(o)}: {T(o.Over)} more than ordered. A reason is asked when the load leaves."))];
    }

    private const int Told = 5;

    private static LoadFinding? Much(OrderOnLoads order, DispatchRules rules) => IsOver(order, rules)
        ? LoadFinding.Ask($"More than ordered: {Says(order)}, {T(order.Over)} too much. Say why it goes all the same.")
        : order.Ordered > Mass.Zero && order.Here > Mass.Zero && order.Elsewhere > Mass.Zero && order.Sent + order.Here + order.Elsewhere > order.Ordered
            ? LoadFinding.Caution($"Other open loads carry {T(order.Elsewhere)} of order {order.Named.Number} too: {Says(order)}. Not all of it is ordered.") : null;

    private static bool IsOver(OrderOnLoads order, DispatchRules rules) => order.Over.Grams > order.Ordered.Grams * rules.OverPercent / 100;

    private static string Says(OrderOnLoads order) => $"of {T(order.Ordered)} of order {order.Named.Number} {T(order.Sent)} went before and {T(order.Here)} stand on this load";

    private static string T(Mass mass) => FormattableString.Invariant($"{mass.Tonnes:0.###} t");

    private static LoadFinding? One(DispatchLoad load, NamedOrder named) => named.Order switch
    {
        null => LoadFinding.Ask($"No order {named.Number} is kept. Look for a typing error in the plan; where it is the customer's own number, say so as the reason."),
        { IsCancelled: true } off => LoadFinding.Stop($"Order {off.Number} was called off. Take it off the plan of the load; what it wanted stays here unless another order wants it."),
        { Customer.Length: 0 } own => LoadFinding.Ask($"Order {own.Number} is for the mill's own warehouse, and the load goes to {load.Consignee}. Say why it goes all the same."),
        { } order when !order.Customer.Equals(load.Consignee, StringComparison.OrdinalIgnoreCase) => LoadFinding.Ask($"Order {order.Number} is of {order.Customer}, and the load goes to {load.Consignee}. Say why it goes all the same."),
        _ => null,
    };

    // A pallet released as another flour goes as that; one whose pack is no product is held against the flour alone.
    internal static bool Wants(NamedOrder named, RampPackage package) =>
        package.Product.Length > 0 && package.As.Length == 0 ? named.Order!.Product.Equals(package.Product, StringComparison.OrdinalIgnoreCase)
            : named.Product is null || named.Product.Flour.Equals(package.GoesAs, StringComparison.OrdinalIgnoreCase);
}
