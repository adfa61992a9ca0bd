using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A stream survey as lines of text, as they come out of a spreadsheet: stream, yield, ash, protein, and the flour it goes to; or, below a line of headings, any of the columns.</summary>
/// <param name="Streams">The streams read.</param>
/// <param name="Valves">What is said of each stream's spout and where it goes; a stream of which nothing is said is missing.</param>
/// <param name="Faults">What could not be read, each a sentence with its line.</param>
public sealed record SurveyLines(IReadOnlyList<MillStream> Streams, IReadOnlyList<StreamValve> Valves, IReadOnlyList<string> Faults)
{
    /// <summary>Headings a line can begin a survey with; the first three have to be there.</summary>
    public static IReadOnlyList<string> Headings { get; } = ["stream", "yield", "ash", "protein", "fn", "damage", "flour", "splits", "may", "locked"];

    private static readonly char[] Between = ['\t', ';', ','];
    private static readonly string[] Usual = ["stream", "yield", "ash", "protein", "flour"];

    /// <summary>The flour of each stream, by its code; a stream without one is missing.</summary>
    public IReadOnlyDictionary<string, string> GoesTo => Valves.Where(v => v.Now is not null).DistinctBy(v => v.Stream).ToDictionary(v => v.Stream, v => v.Now!, StringComparer.Ordinal);

    /// <summary>Reads lines; empty ones and those that begin with # are passed over. Cells are parted by tabs, semicolons or commas, or else by spaces; decimals stand behind a point.</summary>
    public static SurveyLines Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (streams, valves, faults) = (new List<MillStream>(), new List<StreamValve>(), new List<string>());
        var (columns, isFirst) = (Usual, true);
        foreach (var (n, line) in text.ReplaceLineEndings("\n").Split('\n').Index())
        {
            if (line.Trim() is not { Length: > 0 } row || row[0] == '#')
            {
                continue;
            }

            var cells = row.IndexOfAny(Between) >= 0 ? row.Split(Between, StringSplitOptions.TrimEntries) : row.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (isFirst && cells[0].Equals("stream", StringComparison.OrdinalIgnoreCase))
            {
                (columns, isFirst) = ([.. cells.Select(c => c.ToLowerInvariant())], false);
                if (columns.Except(Headings).ToArray() is { Length: > 0 } unknown || columns.Intersect(Headings.Take(3)).Count() < 3)
                {
                    return new SurveyLines([], [], [$"Line {n + 1}: headings are {string.Join(", ", Headings)}, the first three always{(columns.Except(Headings).FirstOrDefault() is { } one ? $"; read “{one}”" : "")}."]);
                }

                continue;
            }

            isFirst = false;
            if (cells.Length < 3 || cells.Length > columns.Length)
            {
                faults.Add($"Line {n + 1}: it has {cells.Length} cells; {(columns == Usual ? "stream, yield, ash, and if you like protein and flour are needed" : $"the headings name {columns.Length}")}.");
                continue;
            }

            var of = new SurveyLine(n + 1, columns, cells, faults);
            if (of.Number("yield", isNeeded: true) is { } yield && of.Number("ash", isNeeded: true) is { } ash)
            {
                streams.Add(new MillStream(cells[0], yield, ash) { ProteinPercent = of.Number("protein"), FallingNumberSeconds = of.Number("fn"), StarchDamagePercent = of.Number("damage") });
            }

            if (of.Valve(cells[0]) is { } valve)
            {
                valves.Add(valve);
            }
        }

        return new SurveyLines(streams, valves, faults);
    }
}
