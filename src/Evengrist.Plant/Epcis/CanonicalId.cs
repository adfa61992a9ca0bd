using System.Text.RegularExpressions;

namespace Evengrist.Plant.Epcis;

/// <summary>The one form of an identifier that the event hash takes: the canonical GS1 Digital Link of the finest key, whatever it was written as.</summary>
internal static partial class CanonicalId
{
    private const string Home = "https://id.gs1.org/";

    private static readonly Dictionary<string, string> Words = new(StringComparer.Ordinal)
    {
        ["gtin"] = "01", ["itip"] = "8006", ["cpid"] = "8010", ["gln"] = "414", ["party"] = "417", ["gsrnp"] = "8017", ["gsrn"] = "8018", ["gcn"] = "255", ["sscc"] = "00", ["gdti"] = "253", ["ginc"] = "401",
        ["gsin"] = "402", ["grai"] = "8003", ["giai"] = "8004", ["cpv"] = "22", ["lot"] = "10", ["ser"] = "21",
    };

    // What may qualify each key, the finest first; an empty list for none.
    private static readonly Dictionary<string, string[]> Finer = new(StringComparer.Ordinal)
    {
        ["00"] = [], ["01"] = ["21", "235", "10", "22"], ["8006"] = ["21", "10", "22"], ["8010"] = ["8011"], ["414"] = ["254"], ["417"] = [], ["8017"] = [], ["8018"] = [], ["255"] = [], ["253"] = [], ["401"] = [], ["402"] = [],
        ["8003"] = [], ["8004"] = [],
    };

    /// <summary>The canonical form; a text that is no identifier of GS1 comes back as it is.</summary>
    public static string Of(string text) => text.StartsWith("urn:epc:", StringComparison.Ordinal) ? EpcUri.ToPath(text) is { } path ? Home + path : text
        : text.StartsWith("https://", StringComparison.Ordinal) || text.StartsWith("http://", StringComparison.Ordinal) ? OfLink(text) ?? text
        : text;

    /// <summary>The key of GS1 that a link names, such as 01, and its number; null for what is no such link.</summary>
    public static (string Key, string Value)? KeyIn(string text) => text.StartsWith("http", StringComparison.Ordinal) && Of(text) is var link && link.StartsWith(Home, StringComparison.Ordinal) && link[Home.Length..].Split('/') is [var key, var value, ..]
        ? (key, value) : null;

    private static string? OfLink(string link)
    {
        var end = link.AsSpan().IndexOfAny('?', '#');
        var segments = (end < 0 ? link : link[..end]).TrimEnd('/').Split('/');
        for (var i = 3; i + 1 < segments.Length; i++)
        {
            var key = Words.GetValueOrDefault(segments[i], segments[i]);
            if (Finer.TryGetValue(key, out var finer) && Value(key, segments[i + 1]) is { } value)
            {
                return Qualified(segments[(i + 2)..], finer) is { } qualifier ? Home + key + "/" + value + qualifier : null;
            }
        }

        return null;
    }

    // Null where something stands there that qualifies no such key.
    private static string? Qualified(string[] rest, string[] finer)
    {
        if (rest.Length % 2 != 0)
        {
            return null;
        }

        var given = rest.Chunk(2).Select(pair => (Key: Words.GetValueOrDefault(pair[0], pair[0]), Value: pair[1])).ToList();
        if (given.Any(g => !finer.Contains(g.Key)))
        {
            return null;
        }

        var finest = finer.FirstOrDefault(f => f != "22" && given.Any(g => g.Key == f));
        return finest is null ? "" : $"/{finest}/{given.First(g => g.Key == finest).Value}";
    }

    private static string? Value(string key, string value) => key switch
    {
        "01" => value.Length is 8 or 12 or 13 or 14 && value.All(char.IsAsciiDigit) ? value.PadLeft(14, '0') : null,
        _ => Forms(key).IsMatch(value) ? value : null,
    };

    private static Regex Forms(string key) => key switch
    {
        "00" or "8006" or "8017" or "8018" => Eighteen(),
        "414" or "417" => Thirteen(),
        "402" => Seventeen(),
        "253" or "255" => ThirteenAndMore(),
        "8003" => FourteenAndMore(),
        _ => FourAndMore(),
    };

    [GeneratedRegex(@"\A[0-9]{18}\z")]
    private static partial Regex Eighteen();

    [GeneratedRegex(@"\A[0-9]{17}\z")]
    private static partial Regex Seventeen();

    [GeneratedRegex(@"\A[0-9]{13}\z")]
    private static partial Regex Thirteen();

    [GeneratedRegex(@"\A[0-9]{13}.{0,60}\z")]
    private static partial Regex ThirteenAndMore();

    [GeneratedRegex(@"\A[0-9]{14}.{0,60}\z")]
    private static partial Regex FourteenAndMore();

    [GeneratedRegex(@"\A[0-9]{4}.{0,90}\z")]
    private static partial Regex FourAndMore();
}
