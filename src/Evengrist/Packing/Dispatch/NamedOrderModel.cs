namespace Evengrist.Packing.Dispatch;

/// <summary>What stands against the orders a load names: none kept, called off, another customer's, another product than the pallet scanned. Model: docs/model/dispatch.md.</summary>
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

    private static LoadFinding? One(DispatchLoad load, NamedOrder named) => named.Order switch
    {
        null => LoadFinding.Ask($"No order {named.Number} is kept. Look for a typing error in the plan; where it is the customer's own number, say so as the reason."),
        { IsCancelled: true } off => LoadFinding.Stop($"Order {off.Number} was called off. Take it off the plan of the load; what it wanted stays here unless another order wants it."),
        { Customer.Length: 0 } own => LoadFinding.Ask($"Order {own.Number} is for the mill's own warehouse, and the load goes to {load.Consignee}. Say why it goes all the same."),
        { } order when !order.Customer.Equals(load.Consignee, StringComparison.OrdinalIgnoreCase) => LoadFinding.Ask($"Order {order.Number} is of {order.Customer}, and the load goes to {load.Consignee}. Say why it goes all the same."),
        _ => null,
    };

    // A pallet released as another flour goes as that; one whose pack is no product is held against the flour alone.
    private static bool Wants(NamedOrder named, RampPackage package) =>
        package.Product.Length > 0 && package.As.Length == 0 ? named.Order!.Product.Equals(package.Product, StringComparison.OrdinalIgnoreCase)
            : named.Product is null || named.Product.Flour.Equals(package.GoesAs, StringComparison.OrdinalIgnoreCase);
}
