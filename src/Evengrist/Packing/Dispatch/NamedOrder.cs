using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;

namespace Evengrist.Packing.Dispatch;

/// <summary>An order that a load names by its number, with what is kept of it.</summary>
/// <param name="Number">The number, as the load names it.</param>
public sealed record NamedOrder(string Number)
{
    /// <summary>The order in its newest version; null where none of the number is kept.</summary>
    public PackingOrder? Order { get; init; }

    /// <summary>Its product in its newest version; null where the order or the product is not kept.</summary>
    public Product? Product { get; init; }
}
