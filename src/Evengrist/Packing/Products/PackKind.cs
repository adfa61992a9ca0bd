namespace Evengrist.Packing.Products;

/// <summary>What a flour is sold in.</summary>
public enum PackKind
{
    /// <summary>A bag for bakers and other trade, on a pallet.</summary>
    Bag,

    /// <summary>A small pack for households, several to a bale or case.</summary>
    Retail,

    /// <summary>A big bag, one to a pallet.</summary>
    BigBag,

    /// <summary>Loose, in a tanker.</summary>
    Bulk,
}
