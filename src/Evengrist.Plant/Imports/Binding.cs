using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>Understands a table's heading and declarations before any row is read.</summary>
internal static class Binding
{
    public static Parsed<Bindings> Of(Table table, ImportKind kind, ImportOptions options)
    {
        var faults = new List<Fault>();
        var columns = Columns(table.Heading, Layout.Of(kind), faults);
        var zone = Zone(table, options, faults);
        var mark = Mark(table, columns.Values, options, faults);
        return faults.Count > 0 ? Parsing.Failed<Bindings>(faults) : Parsing.Got(new Bindings(columns, table.Heading, mark, zone));
    }

    private static Dictionary<string, Bound> Columns(Row row, IReadOnlyList<Column> layout, List<Fault> faults)
    {
        var found = new Dictionary<string, Bound>(StringComparer.Ordinal);
        for (var i = 0; i < row.Cells.Count; i++)
        {
            var text = row[i].Text;
            var heading = Heading.Of(text);
            var column = layout.FirstOrDefault(c => c.Name == heading?.Name);
            if (column is null)
            {
                faults.Add(new Fault(row.Line, i + 1, "", Fault.Show(text), Unknown(heading?.Name ?? text, layout)));
            }
            else if (!column.Takes(heading!.Unit))
            {
                faults.Add(new Fault(row.Line, i + 1, "", Fault.Show(text), $"the heading {Ways(column)}"));
            }
            else if (!found.TryAdd(column.Name, new Bound(column, i, text, heading.Unit ?? "")))
            {
                faults.Add(new Fault(row.Line, i + 1, "", Fault.Show(text), $"one column named {column.Name}, not two"));
            }
        }

        var read = row.Cells.Select(c => Heading.Of(c.Text)?.Name).ToHashSet();
        faults.AddRange(layout.Where(c => c.Required && !read.Contains(c.Name))
            .Select(c => Fault.OfLine(row.Line, "", $"a column {Ways(c)}")));
        foreach (var uncertain in found.Values.Where(b => b.Column is ReadingColumn { IsUncertainty: true }).ToArray())
        {
            if (!found.TryGetValue(uncertain.Column.Name[2..], out var value) || value.Unit != uncertain.Unit)
            {
                faults.Add(new Fault(row.Line, uncertain.Index + 1, "", Fault.Show(uncertain.Heading), $"a column {uncertain.Column.Name[2..]} [{uncertain.Unit}] beside it, in the same unit and basis"));
            }
        }

        return found;
    }

    private static string Unknown(string read, IReadOnlyList<Column> layout)
    {
        var names = layout.Select(c => c.Name).ToArray();
        return Nearest.To(read, names) is { } near
            ? $"a known heading; the nearest is {layout.First(c => c.Name == near).Headings[0]}"
            : $"a known heading: {string.Join(", ", layout.Where(c => c is not ReadingColumn { IsUncertainty: true }).Select(c => c.Headings[0]))}";
    }

    private static string Ways(Column column) => string.Join(" or ", column.Headings);

    private static DateTimeZone? Zone(Table table, ImportOptions options, List<Fault> faults)
    {
        if (!table.Declared.TryGetValue("zone", out var declared))
        {
            return options.Zone;
        }

        if (TimeColumn.Zone(declared.Value) is not { } zone)
        {
            faults.Add(Fault.OfLine(declared.Line, declared.Value, "a zone of the tz database, such as America/Chicago or Europe/Paris"));
            return null;
        }

        if (options.Zone is { } chosen && chosen.Id != zone.Id)
        {
            faults.Add(Fault.OfLine(declared.Line, declared.Value, $"the zone chosen for this import, {chosen.Id}, or none chosen"));
        }

        return zone;
    }

    private static DecimalMark Mark(Table table, IEnumerable<Bound> columns, ImportOptions options, List<Fault> faults)
    {
        DecimalMark? declared = null;
        if (table.Declared.TryGetValue("decimal", out var text))
        {
            declared = text.Value.ToLowerInvariant() switch { "comma" => DecimalMark.Comma, "point" => DecimalMark.Point, _ => null };
            if (declared is null)
            {
                faults.Add(Fault.OfLine(text.Line, text.Value, "comma or point"));
            }
            else if (options.Decimal is { } chosen && chosen != declared)
            {
                faults.Add(Fault.OfLine(text.Line, text.Value, $"the decimal mark chosen for this import, {chosen.ToString().ToLowerInvariant()}, or none chosen"));
            }
        }

        return declared ?? options.Decimal ?? MarkShown.By(table, columns.Where(c => c.Column.IsNumeric).OrderBy(c => c.Index).ToArray(), faults);
    }
}
