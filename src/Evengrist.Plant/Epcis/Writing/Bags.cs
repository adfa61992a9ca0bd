using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Products;
using Evengrist.Quantities;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>Which bags lie on a pallet: the product's, of the lot that is printed on them. Without a product, or where the mass is no whole bags, none are told.</summary>
internal sealed class Bags(IReadOnlyList<Product> products, FlourLots? lots, MillNames names)
{
    private readonly Dictionary<(string Flour, string Packed), Product?> known = [];
    private readonly Dictionary<PlaceId, string?> named = [];

    /// <summary>The bags on a pallet by their lot, and how many; null where none are told.</summary>
    public (string Lot, int Count)? On(Book book, Place unit, Mass mass) =>
        LotOf(book, unit) is { } lot && ProductOn(unit) is { } product && mass > Mass.Zero && mass.Grams % product.PackGrams == 0 ? (lot, (int)(mass.Grams / product.PackGrams)) : null;

    /// <summary>The lot of the bags on a pallet, as the bags say it; null where it is not known.</summary>
    public string? LotOf(Book book, Place unit)
    {
        if (unit.Kind != PlaceKind.Pallet || lots is null || products.Count == 0)
        {
            return null;
        }

        if (!named.TryGetValue(unit.Id, out var lot))
        {
            named[unit.Id] = lot = ProductOn(unit) is { } product && lots.CodeOf(book, unit) is { Length: > 0 } code ? names.Bags(product, code) : null;
        }

        return lot;
    }

    private Product? ProductOn(Place unit)
    {
        var sort = (unit.Material, unit.Name);
        if (!known.TryGetValue(sort, out var product))
        {
            known[sort] = product = Product.On(products, unit) is { PackGrams: > 0 } found ? found : null;
        }

        return product;
    }
}
