using Evengrist.Ledger;
using Evengrist.Packing.Products;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>The URIs by which places, lots, units, parties and papers go in a document.</summary>
internal sealed class MillNames(MillKeys keys, string mill)
{
    private const string Gs1 = "https://id.gs1.org/";

    private readonly string own = keys.Address is { } address ? address.TrimEnd('/') + "/id/" : $"urn:x-mill:{Slug(mill)}:";
    private readonly char between = keys.Address is null ? ':' : '/';

    /// <summary>The namespace of the members that are ours.</summary>
    public const string Terms = "urn:x-mill:terms:";

    /// <summary>A code as it stands in a name.</summary>
    public static string Escaped(string code) => Uri.EscapeDataString(code);

    /// <summary>The code at the end of a name.</summary>
    public static string CodeIn(string name) => name[(name.LastIndexOfAny(['/', ':']) + 1)..];

    public string Site => keys.Site is { } gln ? $"{Gs1}414/{gln}" : Own("place", "site");

    public string Mill => keys.Party is { } gln ? $"{Gs1}417/{gln}" : Own("party", "mill");

    /// <summary>A bin, a pit, a line of the plant.</summary>
    public string Inside(Place place) => keys.Site is { } gln && place.Code.Length <= 20 ? $"{Gs1}414/{gln}/254/{Escaped(place.Code)}" : Own("place", place.Code);

    /// <summary>Where it comes from or goes to: a field, an elevator, a customer, as a place.</summary>
    public string Outside(Place place) => keys.Parties.TryGetValue(place.Code, out var gln) ? $"{Gs1}414/{gln}" : Own("place", place.Code);

    public string Party(Place place) => keys.Parties.TryGetValue(place.Code, out var gln) ? $"{Gs1}417/{gln}" : Own("party", place.Code);

    /// <summary>A lot of a wheat class or flour.</summary>
    public string Lot(string code, string material) => keys.Products.TryGetValue(material, out var gtin) && code.Length <= 20 ? $"{Gs1}01/{gtin}/10/{Escaped(code)}" : Own("lot", code);

    /// <summary>Bags of a product and a lot, as they are printed.</summary>
    public string Bags(Product product, string lot) => product.PackNumber is { } gtin && lot.Length <= 20 ? $"{Gs1}01/{gtin.Digits}/10/{Escaped(lot)}" : Own("bags", $"{product.Code}-{lot}");

    /// <summary>A pallet, load or tote by itself.</summary>
    public string Unit(Place place) => keys.Units.TryGetValue(place.Code, out var sscc) ? $"{Gs1}00/{sscc}" : Own("unit", place.Code);

    public string Paper(string what, string code) => Own(what, code);

    private string Own(string what, string code) => $"{own}{what}{between}{Escaped(code)}";


    private static string Slug(string name)
    {
        var slug = string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
        return slug.Length > 0 ? slug : "mill";
    }
}
