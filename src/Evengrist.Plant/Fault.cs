using System.Globalization;
using System.Text;

namespace Evengrist.Plant;

/// <summary>One thing wrong with what came from outside: where it stands, what was read, what was expected.</summary>
/// <param name="Line">Line of the text or row of the sheet, from 1; null where the fault has no line (a whole file, a JSON path, a scanned text).</param>
/// <param name="Column">Column, from 1; null where the fault is the whole line's.</param>
/// <param name="Name">Heading of the column, or the JSON path; may be empty.</param>
/// <param name="Read">What was read, made safe to print.</param>
/// <param name="Expected">What was expected, and where it helps what to do.</param>
public sealed record Fault(int? Line, int? Column, string Name, string Read, string Expected)
{
    private const int MostShown = 60;

    /// <summary>Whether <see cref="Expected"/> is a sentence of its own that says what is wrong: nothing single was read that could be shown.</summary>
    public bool IsTold { get; private init; }

    /// <summary>The place in words: <c>line 4, column 3 (gross [kg])</c>, <c>character 17 ((10))</c> of a text without lines, or the JSON path.</summary>
    public string Where
    {
        get
        {
            var line = Line is { } l ? string.Create(CultureInfo.InvariantCulture, $"line {l}") : Column is { } at ? string.Create(CultureInfo.InvariantCulture, $"character {at}") : "";
            var column = Line is not null && Column is { } c ? string.Create(CultureInfo.InvariantCulture, $", column {c}") : "";
            var name = Name.Length == 0 ? "" : line.Length == 0 ? Name : $" ({Name})";
            return line.Length == 0 && name.Length == 0 ? "the file" : line + column + name;
        }
    }

    /// <summary>A fault of the whole file.</summary>
    public static Fault OfFile(string read, string expected) => new(null, null, "", Show(read), expected);

    /// <summary>A fault of a line.</summary>
    public static Fault OfLine(int line, string read, string expected) => new(line, null, "", Show(read), expected);

    /// <summary>A fault at a JSON path such as <c>$.draws[2].t</c>.</summary>
    public static Fault AtPath(string path, string read, string expected) => new(null, null, path, Show(read), expected);

    /// <summary>A fault within a text that has no lines, such as a scanned one.</summary>
    /// <param name="character">Which character, from 1.</param>
    /// <param name="name">What stands there; may be empty.</param>
    /// <param name="read">What was read.</param>
    /// <param name="expected">What was expected.</param>
    public static Fault AtCharacter(int character, string name, string read, string expected) => new(null, character, name, Show(read), expected);

    /// <summary>What is wrong with a part that is read but cannot be meant, in a sentence.</summary>
    public static Fault Told(string path, string sentence) => new(null, null, path, "", sentence) { IsTold = true };

    /// <summary>What is wrong with a line that is read but cannot be meant, in a sentence.</summary>
    public static Fault ToldOfLine(int line, string sentence) => new(line, null, "", "", sentence) { IsTold = true };

    /// <summary>Outside text cut short and with nothing in it that a terminal or page could obey.</summary>
    public static string Show(string text)
    {
        var shown = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (shown.Length >= MostShown)
            {
                return shown.Append('…').ToString();
            }

            var harmless = !Rune.IsControl(rune) && Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator);
            shown.Append(harmless ? rune.ToString() : $"\\u{rune.Value:x4}");
        }

        return shown.ToString();
    }

    /// <summary><c>line 4, column 3 (gross [kg]): read "3846O"; expected a number such as 38460</c>.</summary>
    public override string ToString() => IsTold ? $"{Where}: {Expected}" : Read.Length == 0 ? $"{Where}: read nothing; expected {Expected}" : $"{Where}: read \"{Read}\"; expected {Expected}";
}
