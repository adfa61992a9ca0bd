using Evengrist.Ledger;
using Evengrist.Packing.Products;

namespace Evengrist.Records.Packing;

/// <summary>The products a mill packs: papers by code and version, nothing lost.</summary>
public static class Products
{
    /// <summary>Every product in its newest version, by code.</summary>
    public static IReadOnlyList<KeptProduct> Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Product.PaperKind).NewestOfEach().Select(Read).OfType<KeptProduct>()];
    }

    /// <summary>All versions of one, the first first; empty where none is kept. Case does not matter.</summary>
    public static IReadOnlyList<KeptProduct> Versions(Mill mill, string code)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(code);
        return [.. mill.Papers(Product.PaperKind).All().Where(p => p.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase)).Select(Read).OfType<KeptProduct>()];
    }

    /// <summary>The newest version of one; null where none is kept. Case does not matter.</summary>
    public static Product? Find(Mill mill, string code) => Versions(mill, code) is { Count: > 0 } versions ? versions[^1].Product : null;

    /// <summary>The product on a pallet or in a load of the ledger, in its newest version; null where none fits.</summary>
    public static Product? On(Mill mill, Place place) => Product.On(Newest(mill).Select(k => k.Product), place);

    /// <summary>Keeps a product as the next version of its code; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="product">What it says.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it follows, so that nobody's is overwritten unseen; 0 for a new one, null for whichever is newest.</param>
    public static (KeptProduct? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, Product product, string? by, int? after = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(product);
        var all = Newest(mill);
        var kept = all.FirstOrDefault(k => k.Product.Code.Equals(product.Code, StringComparison.OrdinalIgnoreCase));
        var newest = kept?.Version ?? 0;
        string[] faults =
        [
            .. string.IsNullOrWhiteSpace(by) ? ["Say who you are first: every record carries a name."] : Array.Empty<string>(),
            .. product.Faults(),
            .. after is { } seen && seen != newest ? [seen == 0 ? $"{product.Code} is kept already in version {newest}: change that one, or give another code." : $"{product.Code} was changed meanwhile: version {newest} stands. Look at it first."] : Array.Empty<string>(),
            .. kept is not null && !kept.Product.Flour.Equals(product.Flour, StringComparison.OrdinalIgnoreCase) ? [$"{product.Code} is of {kept.Product.Flour}: one of {product.Flour} has another code."] : Array.Empty<string>(),
            .. kept is not null && after != 0 && string.IsNullOrWhiteSpace(product.Reason) && kept.Product.ToJson() != product.ToJson() ? ["Say why it changes: the next person reads it beside the version."] : Array.Empty<string>(),
            .. all.Where(k => k != kept).SelectMany(k => Shared(k.Product, product)),
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var code = kept?.Product.Code ?? product.Code;
        try
        {
            var version = mill.Papers(Product.PaperKind).KeepNext(code, (product with { Code = code }).ToJson(), by!.Trim());
            return (Read(mill.Papers(Product.PaperKind).Find(code, version)!), []);
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return (null, [$"{code} was kept meanwhile by another. Look at it first."]);
        }
    }

    // A trade item number, and what a pallet shows, are of one product only.
    private static IEnumerable<string> Shared(Product other, Product product)
    {
        if (new[] { product.PackNumber, product.CaseNumber }.FirstOrDefault(n => n is not null && (n == other.PackNumber || n == other.CaseNumber)) is { } number)
        {
            yield return $"The number {number} is of {other.Code} already: give each its own.";
        }

        if ((product.Kind == PackKind.Bulk || product.PackedAs.Length > 0) && other.Flour.Equals(product.Flour, StringComparison.OrdinalIgnoreCase) && other.PackedAs == product.PackedAs && (other.Kind == PackKind.Bulk) == (product.Kind == PackKind.Bulk))
        {
            yield return $"{other.Code} is of the same flour in the same pack (“{product.PackedAs}”): a pallet would be of both.";
        }
    }

    private static KeptProduct? Read(Paper paper) => Product.TryRead(paper.Json, out var product, out _) ? new KeptProduct(paper.Version, paper.By, paper.Recorded, product) : null;
}
