using Evengrist.Packing.Codes;

namespace Evengrist.Plant.Epcis;

/// <summary>An EPC URI (<c>urn:epc:…</c>) carried into the path of a GS1 Digital Link, check digits reckoned.</summary>
internal static class EpcUri
{
    private const int Gtin = 13, Gln = 12, Serial18 = 17, Shipment = 16;

    /// <summary>The path, such as <c>01/04012345123456/10/Lot987</c>; null where the text is no EPC URI of a GS1 key.</summary>
    public static string? ToPath(string uri)
    {
        var named = uri.Split(':', 5);
        if (named is not ["urn", "epc", "id" or "class" or "idpat", var scheme, var rest] || rest.Split('.', 3) is not [var prefix, .. var parts] || parts.Length == 0
            || prefix.Length is < 6 or > 12 || !prefix.All(char.IsAsciiDigit))
        {
            return null;
        }

        var (second, last) = (parts[0], parts.Length > 1 ? parts[1] : null);
        return named[2] == "idpat" ? (last ?? second).EndsWith('*') ? Pattern(scheme, prefix, second) : null
            : named[2] == "class" ? scheme == "lgtin" && last is not null ? Join("01/", Item(prefix, second), "/10/", last) : null
            : Instance(scheme, prefix, second, last);
    }

    private static string? Instance(string scheme, string prefix, string second, string? last) => (scheme, last) switch
    {
        ("sgtin", not null) => Join("01/", Item(prefix, second), "/21/", last),
        ("upui", not null) => Join("01/", Item(prefix, second), "/235/", last),
        ("itip", not null) when last.Split('.', 3) is [{ Length: 2 } piece, { Length: 2 } total, var serial] => Join("8006/", Item(prefix, second), piece + total + "/21/", serial),
        ("sscc", null) => Join("00/", Extended(prefix, second, Serial18)),
        ("sgln", "0") => Join("414/", Key(prefix, second, Gln)),
        ("sgln", not null) => Join("414/", Key(prefix, second, Gln), "/254/", last),
        ("pgln", null) => Join("417/", Key(prefix, second, Gln)),
        ("grai", not null) => Join("8003/", Key("0" + prefix, second, Gln + 1), "", last),
        ("gdti", not null) => Join("253/", Key(prefix, second, Gln), "", last),
        ("sgcn", not null) => Join("255/", Key(prefix, second, Gln), "", last),
        ("gsrn", null) => Join("8018/", Key(prefix, second, Serial18)),
        ("gsrnp", null) => Join("8017/", Key(prefix, second, Serial18)),
        ("gsin", null) => Join("402/", Key(prefix, second, Shipment)),
        ("giai", _) => Join("8004/", prefix, "", Whole(second, last)),
        ("ginc", _) => Join("401/", prefix, "", Whole(second, last)),
        ("cpi", not null) => Join("8010/", prefix + Encoded(second), "/8011/", last),
        _ => null,
    };

    private static string? Pattern(string scheme, string prefix, string second) => scheme switch
    {
        "sgtin" or "upui" => Join("01/", Item(prefix, second)),
        "grai" => Join("8003/", Key("0" + prefix, second, Gln + 1)),
        "gdti" => Join("253/", Key(prefix, second, Gln)),
        "sgcn" => Join("255/", Key(prefix, second, Gln)),
        "cpi" => Join("8010/", prefix, "", second),
        _ => null,
    };

    // Item reference: its first digit, the indicator, stands before the company prefix.
    private static string? Item(string prefix, string reference) => reference.Length > 0 ? Extended(prefix, reference, Gtin) : null;

    private static string? Extended(string prefix, string reference, int digits) => reference.Length > 0 ? Key(reference[..1] + prefix, reference[1..], digits) : null;

    private static string? Key(string first, string second, int digits) =>
        first.Length + second.Length == digits && second.All(char.IsAsciiDigit) && first.All(char.IsAsciiDigit) ? CheckDigit.Complete(first + second) : null;

    private static string Whole(string second, string? last) => last is null ? second : $"{second}.{last}";

    private static string? Join(string key, string? value, string qualifier = "", string? last = null) => value is null || last == "" ? null : key + value + (last is null ? "" : qualifier + Encoded(last));

    // What may stand bare in an EPC URI but not in a Digital Link.
    private static string Encoded(string text) => string.Concat(text.Select(c => c is '!' or '(' or ')' or '*' or '+' or ',' or ':' ? $"%{(int)c:X2}" : c.ToString()));
}
