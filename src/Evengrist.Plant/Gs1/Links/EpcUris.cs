namespace Evengrist.Plant.Gs1.Links;

/// <summary>EPC URIs, the older names of the same things: without check digits, with a point behind the company prefix.</summary>
/// <remarks>Layouts: GS1 Tag Data Standard, from memory, held against the published vectors of the EPCIS event hash generator.</remarks>
public static class EpcUris
{
    private const int ShortestPrefix = 6, LongestPrefix = 12;

    /// <summary>The elements of an EPC URI, or what is wrong. Never throws for what it reads.</summary>
    /// <param name="text">The URI.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Parsed<ElementString> Read(string text, int year)
    {
        ArgumentNullException.ThrowIfNull(text);
        var scheme = EpcScheme.All.FirstOrDefault(s => text.StartsWith(s.Start, StringComparison.Ordinal));
        if (scheme is null || text.Length > ElementStrings.MostCharacters)
        {
            return Parsing.Failed<ElementString>(Fault.AtCharacter(1, "", text, $"an EPC URI of one of these kinds: {string.Join(", ", EpcScheme.All.Select(s => s.Start))}"));
        }

        var parts = text[scheme.Start.Length..].Split('.', scheme.PartCount);
        var prefix = parts[0];
        if (parts.Length < scheme.PartCount || prefix.Length is < ShortestPrefix or > LongestPrefix || !prefix.All(char.IsAsciiDigit)
            || (scheme.Digits > 0 && (prefix.Length + parts[1].Length != scheme.Digits || !parts[1].All(char.IsAsciiDigit))))
        {
            return Parsing.Failed<ElementString>(Fault.AtCharacter(scheme.Start.Length + 1, "", text[scheme.Start.Length..], scheme.Layout));
        }

        var last = parts[^1];
        return PercentText.Read(last) is not { } meant ? Parsing.Failed<ElementString>(Fault.AtCharacter(text.Length - last.Length + 1, "", last, PercentText.Expected))
            : scheme.Ends is { } end && last != end ? Parsing.Failed<ElementString>(Fault.AtCharacter(text.Length - last.Length + 1, "", last, $"{end} at the end"))
            : ElementString.Make(scheme.Elements([prefix, .. parts[1..^1], meant]), year);
    }

    /// <summary>The finest EPC URI of elements: a bag by its serial before its lot, a lot before its product.</summary>
    /// <param name="elements">The elements.</param>
    /// <param name="prefixLength">How many digits the company prefix has that the key begins with, 6 to 12: a link does not say, a URI has to.</param>
    public static Parsed<string> Write(ElementString elements, int prefixLength)
    {
        ArgumentNullException.ThrowIfNull(elements);
        if (prefixLength is < ShortestPrefix or > LongestPrefix)
        {
            return Parsing.Failed<string>(Fault.OfFile(FormattableString.Invariant($"{prefixLength}"), "the length of the company prefix, 6 to 12 digits: an EPC URI has a point behind the prefix"));
        }

        return EpcScheme.All.Select(s => s.Written(elements, prefixLength)).FirstOrDefault(u => u is not null) is { } uri ? Parsing.Got(uri)
            : Parsing.Failed<string>(Fault.OfFile(elements.ToString(), "a key that has an EPC URI here: (00), (01), (414), (417), (253) and (8003) with their serials, (8004)"));
    }
}
