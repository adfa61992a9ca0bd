using System.Globalization;
using Evengrist.Streams;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A stream survey as lines of text, as they come out of a spreadsheet: stream, yield, ash, protein, and the flour it goes to.</summary>
/// <param name="Streams">The streams read.</param>
/// <param name="GoesTo">The flour of each stream, by its code; a stream without one is missing.</param>
/// <param name="Faults">What could not be read, each a sentence with its line.</param>
public sealed record SurveyLines(IReadOnlyList<MillStream> Streams, IReadOnlyDictionary<string, string> GoesTo, IReadOnlyList<string> Faults)
{
    private static readonly char[] Between = ['\t', ';', ','];

    /// <summary>Reads lines; empty ones and those that begin with # are passed over. Cells are parted by tabs, semicolons or commas, or else by spaces; decimals stand behind a point.</summary>
    public static SurveyLines Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (streams, goes, faults) = (new List<MillStream>(), new Dictionary<string, string>(StringComparer.Ordinal), new List<string>());
        foreach (var (n, line) in text.ReplaceLineEndings("\n").Split('\n').Index())
        {
            if (line.Trim() is not { Length: > 0 } row || row[0] == '#')
            {
                continue;
            }

            var cells = row.IndexOfAny(Between) >= 0 ? row.Split(Between, StringSplitOptions.TrimEntries) : row.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (cells.Length is < 3 or > 5)
            {
                faults.Add($"Line {n + 1}: it has {cells.Length} cells; stream, yield, ash, and if you like protein and flour are needed.");
                continue;
            }

            var (yield, ash, protein) = (Number(cells[1], n, "yield", faults), Number(cells[2], n, "ash", faults), cells.Length > 3 && cells[3].Length > 0 ? Number(cells[3], n, "protein", faults) : null);
            if (yield is { } y && ash is { } a)
            {
                streams.Add(new MillStream(cells[0], y, a) { ProteinPercent = protein });
            }

            if (cells.Length == 5 && cells[4].Length > 0)
            {
                goes[cells[0]] = cells[4];
            }
        }

        return new SurveyLines(streams, goes, faults);
    }

    private static double? Number(string cell, int line, string what, List<string> faults)
    {
        if (double.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        faults.Add($"Line {line + 1}, {what}: a number such as 0.45 is needed; read “{cell}”.");
        return null;
    }
}
