using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Every application identifier. Facts of GS1's syntax dictionary of 27 July 2026, see docs/decisions/0016-application-identifiers.md.</summary>
public static class Identifiers
{
    private static readonly Dictionary<string, ApplicationIdentifier> ByCode =
        new[] { GoodsRows.All, MeasureRows.All, MoneyRows.All, PlaceRows.All, ShippingRows.All, OriginRows.All, CareRows.All, AssetRows.All, OwnRows.All }
            .SelectMany(r => r).Select(r => r.Written()).ToDictionary(r => r.Code);

    // All identifiers that begin alike in two digits are equally long.
    private static readonly Dictionary<string, int> LengthByStart = ByCode.Keys.GroupBy(c => c[..2]).ToDictionary(g => g.Key, g => g.First().Length);

    /// <summary>All of them.</summary>
    public static IReadOnlyCollection<ApplicationIdentifier> All => ByCode.Values;

    /// <summary>The identifier of a code.</summary>
    public static bool TryFind(string code, [NotNullWhen(true)] out ApplicationIdentifier? identifier) => ByCode.TryGetValue(code, out identifier);

    /// <summary>The identifier a text begins with.</summary>
    public static bool TryBegin(ReadOnlySpan<char> text, [NotNullWhen(true)] out ApplicationIdentifier? identifier)
    {
        identifier = null;
        return text.Length >= 2 && LengthByStart.TryGetValue(text[..2].ToString(), out var length) && text.Length >= length && ByCode.TryGetValue(text[..length].ToString(), out identifier);
    }
}
