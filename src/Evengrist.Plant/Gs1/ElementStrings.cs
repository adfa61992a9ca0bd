namespace Evengrist.Plant.Gs1;

/// <summary>Reads what a scanner sends, or the line for people with its brackets.</summary>
public static class ElementStrings
{
    /// <summary>The most characters any symbol holds: digits in the largest QR code (ISO/IEC 18004).</summary>
    public const int MostCharacters = 7089;

    private static readonly string[] OfGs1 = ["]C1", "]d2", "]Q3", "]e0", "]J1"];

    /// <summary>The elements of a text, or every fault with its place. Never throws for what it reads, and takes time in proportion to its length.</summary>
    /// <param name="text">With or without the symbology identifier before it.</param>
    /// <param name="year">This year, for the century of dates.</param>
    /// <param name="whole">Whether the text holds all elements of the item: then what belongs together has to be there.</param>
    public static Parsed<ElementString> Read(string text, int year, bool whole = true)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MostCharacters)
        {
            return Parsing.Failed<ElementString>(Fault.AtCharacter(MostCharacters + 1, "", text[MostCharacters..], FormattableString.Invariant($"at most {MostCharacters} characters: no symbol holds more")));
        }

        var begin = 0;
        if (text.StartsWith(']'))
        {
            if (!OfGs1.Any(s => text.StartsWith(s, StringComparison.Ordinal)))
            {
                return Parsing.Failed<ElementString>(Fault.AtCharacter(1, "", text[..Math.Min(3, text.Length)], $"a symbology identifier of a GS1 symbol ({string.Join(", ", OfGs1)}). Other symbols were printed without the mark of GS1 (FNC1)"));
            }

            begin = 3;
        }

        var reader = new ElementReader(year);
        if (begin < text.Length && text[begin] == '(')
        {
            reader.Bracketed(text, begin);
        }
        else
        {
            // Some readers show the mark of GS1 at the beginning as a separator.
            reader.Transmitted(text, begin < text.Length && text[begin] == ElementString.Separator ? begin + 1 : begin);
        }

        return reader.Close(text, whole);
    }
}
