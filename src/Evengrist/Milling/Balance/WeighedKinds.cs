using Evengrist.Ledger;

namespace Evengrist.Milling.Balance;

/// <summary>Which bins take by-products, told by their words where the mill says nothing else.</summary>
public static class WeighedKinds
{
    private static readonly string[] Words = ["bran", "wheatfeed", "feed", "germ", "shorts", "middlings", "pollard", "offal", "screenings"];

    /// <summary>Whether a place takes flour or a by-product: a by-product where its material or name has one of the usual words [memory], flour otherwise.</summary>
    public static WeighedKind Of(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        var words = $"{place.Material} {place.Name}".Split([' ', '-', ',', '/'], StringSplitOptions.RemoveEmptyEntries);
        return words.Any(w => Words.Contains(w, StringComparer.OrdinalIgnoreCase)) ? WeighedKind.ByProduct : WeighedKind.Flour;
    }
}
