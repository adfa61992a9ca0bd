using Evengrist.Plant.Gs1.Table;

namespace Evengrist.Plant.Gs1.Links;

/// <summary>GS1 Digital Links: keys in the path of a web address, all else behind the question mark.</summary>
public static class DigitalLinks
{
    /// <summary>Where canonical links lead.</summary>
    public const string Canonical = "https://id.gs1.org";

    private static readonly int[] ShorterGtins = [8, 12, 13];

    /// <summary>The elements of a link of any domain, or every fault. Never throws for what it reads.</summary>
    /// <param name="text">The link.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Parsed<ElementString> Read(string text, int year)
    {
        ArgumentNullException.ThrowIfNull(text);
        var scheme = new[] { "https://", "http://" }.FirstOrDefault(s => text.StartsWith(s, StringComparison.OrdinalIgnoreCase));
        if (scheme is null || text.Length > ElementStrings.MostCharacters)
        {
            return Parsing.Failed<ElementString>(Fault.AtCharacter(1, "", text, $"a link that begins with https:// and has at most {ElementStrings.MostCharacters} characters"));
        }

        var link = text[scheme.Length..].Split('#')[0].Split('?', 2);
        var segments = link[0].TrimEnd('/').Split('/')[1..];
        var key = LastKey(segments);
        if (key < 0)
        {
            return Parsing.Failed<ElementString>(Fault.AtPath("the path", link[0], "a primary key and its value, such as /01/09521234002017, in digits"));
        }

        var faults = new List<Fault>();
        var pairs = new List<(string Code, string Value)>();
        for (var i = key; i < segments.Length; i += 2)
        {
            Take(segments[i], segments[i + 1], pairs, faults);
        }

        Order(pairs, faults);
        foreach (var attribute in link.Length < 2 ? [] : link[1].Split('&', ';'))
        {
            var sides = attribute.Split('=', 2);
            if (sides[0].Length is >= 2 and <= 4 && sides[0].All(char.IsAsciiDigit))
            {
                Attribute(sides[0], faults);
                Take(sides[0], sides.Length < 2 ? "" : sides[1], pairs, faults);
            }
        }

        return faults.Count > 0 ? Parsing.Failed<ElementString>(faults) : ElementString.Make(pairs, year);
    }

    /// <summary>The canonical link of elements, or why there is none.</summary>
    public static Parsed<string> Write(ElementString elements)
    {
        ArgumentNullException.ThrowIfNull(elements);
        if (Key(elements) is not { } key)
        {
            return Parsing.Failed<string>(Fault.OfFile(elements.ToString(), "a primary key of a link, such as (01) or (00)"));
        }

        var order = key.Identifier.Qualifiers!.MaxBy(o => o.Count(c => elements[c] is not null))!;
        var path = order.Prepend(key.Code).Where(c => elements[c] is not null).ToList();
        var rest = elements.Elements.Where(e => !path.Contains(e.Code)).OrderBy(e => e.Code, StringComparer.Ordinal).ToList();
        var faults = rest.Where(e => !e.Identifier.InLink).Select(e => Fault.AtPath(e.Identifier.ToString(), e.Value, $"no {e.Identifier.Words} in a link of {key.Identifier}: a link cannot carry it")).ToList();
        return faults.Count > 0 ? Parsing.Failed<string>(faults)
            : Parsing.Got(Canonical + string.Concat(path.Select(c => $"/{c}/{PercentText.Write(elements[c]!)}")) + (rest.Count == 0 ? "" : "?" + string.Join('&', rest.Select(e => $"{e.Code}={PercentText.Write(e.Value)}"))));
    }

    /// <summary>The element that keys a link or an EPC URI; null where there is none.</summary>
    internal static Element? Key(ElementString elements) => elements.Elements.Where(e => e.Identifier.Qualifiers is not null).MinBy(e => e.Code, StringComparer.Ordinal);

    // Keys and values go by twos to the end of the path; what stands before the key is the owner's own.
    private static int LastKey(string[] segments)
    {
        for (var at = segments.Length - 2; at >= 0; at -= 2)
        {
            if (Identifiers.TryFind(segments[at], out var identifier) && identifier.Qualifiers is not null)
            {
                return at;
            }
        }

        return -1;
    }

    private static void Take(string code, string written, List<(string Code, string Value)> pairs, List<Fault> faults)
    {
        if (PercentText.Read(written) is not { } value)
        {
            faults.Add(Fault.AtPath($"({code})", written, PercentText.Expected));
            return;
        }

        pairs.Add((code, code == "01" && ShorterGtins.Contains(value.Length) ? value.PadLeft(14, '0') : value));
    }

    private static void Order(List<(string Code, string Value)> pairs, List<Fault> faults)
    {
        if (pairs.Count == 0 || !Identifiers.TryFind(pairs[0].Code, out var key))
        {
            return;
        }

        var given = pairs.Skip(1).Select(p => p.Code).ToList();
        if (!key.Qualifiers!.Any(order => given.SequenceEqual(order.Where(given.Contains))))
        {
            var orders = string.Join(", or ", key.Qualifiers!.Select(o => o.Count == 0 ? "nothing" : string.Join(", ", o)));
            faults.Add(Fault.AtPath("the path", string.Join('/', given), $"behind {key} only {orders}, each once at most and in this order; all else belongs behind the question mark"));
        }
    }

    private static void Attribute(string code, List<Fault> faults)
    {
        if (Identifiers.TryFind(code, out var identifier) && !identifier.InLink)
        {
            faults.Add(Fault.AtPath($"?{code}", code, $"no {identifier.Words} behind the question mark: it belongs in the path, or in no link"));
        }
    }
}
