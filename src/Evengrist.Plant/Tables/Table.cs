namespace Evengrist.Plant.Tables;

/// <summary>A heading and its rows, from CSV text or from a sheet of a workbook: the same shape for both.</summary>
/// <param name="Heading">The first row that is neither blank nor a declaration.</param>
/// <param name="Rows">The rows below that are not blank.</param>
/// <param name="Declared">What the rows above the heading declare, as in <c># decimal: comma</c>; names in lower case, with the line.</param>
/// <param name="Delimiter">What parts the cells of CSV text; null for a sheet.</param>
public sealed record Table(Row Heading, IReadOnlyList<Row> Rows, IReadOnlyDictionary<string, (int Line, string Value)> Declared, char? Delimiter)
{
    internal static Parsed<Table> From(IEnumerable<Row> all, char? delimiter, Limits limits, List<Fault> faults)
    {
        Row? heading = null;
        var rows = new List<Row>();
        var declared = new Dictionary<string, (int, string)>(StringComparer.Ordinal);
        foreach (var row in all)
        {
            if (faults.Count >= limits.Faults)
            {
                break;
            }

            if (row.IsBlank)
            {
                continue;
            }

            if (heading is null && row[0].Text.StartsWith('#'))
            {
                Declare(row, declared, faults);
            }
            else if (heading is null)
            {
                heading = row;
            }
            else
            {
                rows.Add(row);
            }
        }

        if (faults.Count > 0)
        {
            return Parsing.Failed<Table>(faults);
        }

        return heading is null
            ? Parsing.Failed<Table>(Fault.OfFile("", "a heading line and rows below it; the file is empty"))
            : Parsing.Got(new Table(heading, rows, declared, delimiter));
    }

    private static void Declare(Row row, Dictionary<string, (int, string)> declared, List<Fault> faults)
    {
        var text = string.Concat(row.Cells.Select(c => c.Text))[1..];
        var parts = text.Split(':', 2, StringSplitOptions.TrimEntries);
        var name = parts[0].ToLowerInvariant();
        if (parts.Length != 2 || name is not ("decimal" or "zone"))
        {
            faults.Add(Fault.OfLine(row.Line, row[0].Text, "a declaration: \"# decimal: comma\", \"# decimal: point\" or \"# zone: Europe/Paris\""));
        }
        else if (!declared.TryAdd(name, (row.Line, parts[1])))
        {
            faults.Add(Fault.OfLine(row.Line, row[0].Text, $"one declaration of the {name}, not two"));
        }
    }
}
