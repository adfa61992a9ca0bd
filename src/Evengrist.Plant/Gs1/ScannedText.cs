using Evengrist.Plant.Gs1.Links;

namespace Evengrist.Plant.Gs1;

/// <summary>Whatever a scanner or a person gives: an element string, the line with brackets, a link, an EPC URI.</summary>
public static class ScannedText
{
    /// <summary>The elements, or every fault. Never throws for what it reads.</summary>
    /// <param name="text">The text; blanks and line ends round it do not matter, scanners add them.</param>
    /// <param name="year">This year, for the century of dates.</param>
    /// <param name="whole">Whether it holds all elements of the item.</param>
    public static Parsed<ElementString> Read(string text, int year, bool whole = true)
    {
        ArgumentNullException.ThrowIfNull(text);
        var word = text.Trim(' ', '\t', '\r', '\n');
        return word.StartsWith("http", StringComparison.OrdinalIgnoreCase) ? DigitalLinks.Read(word, year)
            : word.StartsWith("]Q1http", StringComparison.OrdinalIgnoreCase) ? DigitalLinks.Read(word[3..], year)
            : word.StartsWith("urn:", StringComparison.Ordinal) ? EpcUris.Read(word, year)
            : ElementStrings.Read(word, year, whole);
    }
}
