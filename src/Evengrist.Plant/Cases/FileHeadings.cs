using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Cases;

/// <summary>The heading of a file that has one row for each figure.</summary>
internal static class FileHeadings
{
    /// <summary>The decimal mark a file declares; a point where it declares none.</summary>
    public static DecimalMark Mark(Table table) => table.Declared.TryGetValue("decimal", out var said) && said.Value.Equals("comma", StringComparison.OrdinalIgnoreCase) ? DecimalMark.Comma : DecimalMark.Point;

    /// <summary>Which heading stands over which column.</summary>
    /// <param name="table">The file.</param>
    /// <param name="columns">The columns it may have.</param>
    /// <param name="faults">Takes what is wrong with the heading.</param>
    public static Dictionary<string, int> Read(Table table, IReadOnlyList<FileColumn> columns, List<Fault> faults)
    {
        var at = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (i, cell) in table.Heading.Cells.Index().Where(c => c.Item.Text.Length > 0))
        {
            var parts = cell.Text.TrimEnd(']').Split('[', 2, StringSplitOptions.TrimEntries);
            var column = columns.FirstOrDefault(c => c.Name.Equals(parts[0], StringComparison.OrdinalIgnoreCase));
            if (column is null || (parts.Length > 1 && column.Unit != parts[1].Replace('μ', 'µ')))
            {
                faults.Add(new Fault(table.Heading.Line, i + 1, "", Fault.Show(cell.Text), column is null ? $"one of the headings {string.Join(", ", columns.Select(c => c.Name))}" : $"{column.Name}{(column.Unit.Length > 0 ? $" [{column.Unit}]" : "")}"));
            }
            else if (!at.TryAdd(column.Name, i))
            {
                faults.Add(new Fault(table.Heading.Line, i + 1, "", Fault.Show(cell.Text), "each heading once"));
            }
        }

        string[] missing = [.. columns.Where(c => c.IsNeeded && !at.ContainsKey(c.Name)).Select(c => c.Name)];
        if (missing.Length > 0 && faults.Count == 0)
        {
            faults.Add(Fault.ToldOfLine(table.Heading.Line, $"headings are missing: {string.Join(", ", missing)}. The first line names the columns."));
        }

        return at;
    }
}
