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
        (Row Heading, IReadOnlyDictionary<string, (int, string)> Declared)? head = null;
        var rows = new List<Row>();
        Each(all, limits, faults, (heading, declared) =>
        {
            head = (heading, declared);
            return rows.Add;
        });
        return faults.Count > 0 ? Parsing.Failed<Table>(faults) : Parsing.Got(new Table(head!.Value.Heading, rows, head.Value.Declared, delimiter));
    }

    /// <summary>Hands the rows below the heading on, one by one; what is wrong with the table goes to the faults.</summary>
    /// <param name="all">All rows.</param>
    /// <param name="limits">How much is read.</param>
    /// <param name="faults">Takes what is wrong; when it is full, nothing more is read.</param>
    /// <param name="begin">Takes the heading and what was declared above it, and gives what takes the rows.</param>
    internal static void Each(IEnumerable<Row> all, Limits limits, List<Fault> faults, Func<Row, IReadOnlyDictionary<string, (int Line, string Value)>, Action<Row>> begin)
    {
        Action<Row>? take = null;
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

            if (take is not null)
            {
                take(row);
            }
            else if (row[0].Text.StartsWith('#'))
            {
                Declare(row, declared, faults);
            }
            else
            {
                take = begin(row, declared);
            }
        }

        if (take is null && faults.Count == 0)
        {
            faults.Add(Fault.OfFile("", "a heading line and rows below it; the file is empty"));
        }
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
