namespace Evengrist.Milling.Sheet;

/// <summary>Where stock leaves the flow sheet: a flour stream, bran, wheatfeed or germ.</summary>
/// <param name="Code">The mill's own short name of the stream, as 1B or 3M; unlike any passage.</param>
/// <param name="Kind">What it is.</param>
public sealed record MillProduct(string Code, ProductKind Kind);

/// <summary>What a product of the mill is.</summary>
public enum ProductKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>A stream of flour; which flour it goes into is divided in Streams.</summary>
    Flour = 1,

    /// <summary>Bran.</summary>
    Bran = 2,

    /// <summary>Wheatfeed: shorts and what else goes to feed.</summary>
    Wheatfeed = 3,

    /// <summary>Germ.</summary>
    Germ = 4,
}
