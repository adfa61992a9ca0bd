using Evengrist.Ledger;
using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>Reads a whole file into drafts for the ledger: all of it, or every fault found in it.</summary>
public static class Import
{
    /// <summary>The batch in a CSV or XLSX file.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="kind">What it is to bring in.</param>
    /// <param name="options">What the person says about it.</param>
    public static Parsed<Batch> Read(Stream stream, ImportKind kind, ImportOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return TableReader.Read(stream, kind.ToString().ToLowerInvariant(), options.Limits)
            .Then(table => Binding.Of(table, kind, options)
                .Then(bindings => Rows(table, bindings, kind, options)));
    }

    private static Parsed<Batch> Rows(Table table, Bindings bindings, ImportKind kind, ImportOptions options)
    {
        var faults = new List<Fault>();
        var drafts = new List<(Draft Draft, Row Row)>();
        foreach (var row in table.Rows)
        {
            if (faults.Count >= options.Limits.Faults)
            {
                faults.Add(Fault.OfLine(row.Line, "more", $"fewer faults; {faults.Count} are listed and the rest of the file was not looked at"));
                break;
            }

            if (row.Cells.Skip(table.Heading.Cells.Count).Any(c => c.Text.Length > 0))
            {
                faults.Add(new Fault(row.Line, table.Heading.Cells.Count + 1, "", Fault.Show(row[table.Heading.Cells.Count].Text), $"{table.Heading.Cells.Count} cells, as in the heading; a number with a comma may need quotes"));
                continue;
            }

            var before = faults.Count;
            var reader = new RowReader(bindings, row, faults);
            var made = Read(kind, reader);
            drafts.AddRange(faults.Count == before ? made.Select(d => (d, row)) : []);
        }

        Repeated(drafts, faults);
        if (faults.Count > 0)
        {
            return Parsing.Failed<Batch>(faults.OrderBy(f => f.Line).ThenBy(f => f.Column).ToArray());
        }

        // Places first, so that a row may name a place that a later row opens; then by time, as the ledger keeps them.
        var ordered = drafts.OrderBy(d => d.Draft is OpenPlace ? 0 : d.Draft is Connect ? 1 : 2).ThenBy(d => DoneAt(d.Draft)).ToArray();
        return ordered.Length == 0
            ? Parsing.Failed<Batch>(Fault.OfLine(table.Heading.Line, "a heading only", "rows below the heading"))
            : Parsing.Got(new Batch(kind, ordered.Select(d => d.Draft).ToArray(), ordered.Select(d => d.Row).ToArray(), table.Heading));
    }

    private static Instant DoneAt(Draft draft) => draft switch
    {
        Move move => move.Until ?? move.At,
        Measure measure => measure.At,
        Happen happen => happen.At,
        _ => default,
    };

    private static IReadOnlyList<Draft> Read(ImportKind kind, RowReader row) => kind switch
    {
        ImportKind.Bins => BinsRow.Read(row),
        ImportKind.Intake => IntakeRow.Read(row),
        ImportKind.Readings => ReadingsRow.Read(row),
        ImportKind.Movements => MovementsRow.Read(row),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of import."),
    };

    private static void Repeated(List<(Draft Draft, Row Row)> drafts, List<Fault> faults)
    {
        var first = new Dictionary<(Type, string), int>();
        var told = new HashSet<int>();
        foreach (var (draft, row) in drafts)
        {
            var key = (draft.GetType(), draft.Key.ToUpperInvariant());
            if (!first.TryAdd(key, row.Line) && told.Add(row.Line))
            {
                faults.Add(Fault.OfLine(row.Line, draft.Key, $"something that line {first[key]} has not said already; if it is another one, give it its own number"));
            }
        }
    }
}
