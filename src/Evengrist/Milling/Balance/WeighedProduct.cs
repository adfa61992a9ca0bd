namespace Evengrist.Milling.Balance;

/// <summary>Whether what leaves the rolls counts as flour in an extraction.</summary>
public enum WeighedKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Flour.</summary>
    Flour = 1,

    /// <summary>Bran, wheatfeed, shorts, germ.</summary>
    ByProduct = 2,
}

/// <summary>A product of the mill over the span of a balance.</summary>
/// <param name="Name">What the mill calls it; each once.</param>
/// <param name="Kind">Flour or by-product.</param>
/// <param name="Mass">What was weighed of it, without additives and rework fed in.</param>
public sealed record WeighedProduct(string Name, WeighedKind Kind, Weighed Mass)
{
    /// <summary>Its moisture; null where it was not read.</summary>
    public MeanMoisture? Moisture { get; init; }
}
