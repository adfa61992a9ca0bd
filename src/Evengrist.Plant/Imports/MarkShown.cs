using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Imports;

/// <summary>Takes the decimal mark from the numbers themselves, where they leave no doubt.</summary>
internal static class MarkShown
{
    public static DecimalMark By(Table table, IReadOnlyList<Bound> columns, List<Fault> faults)
    {
        DecimalMark? shown = null;
        (Row Row, Bound Column)? shownAt = null, doubtfulAt = null;
        foreach (var row in table.Rows)
        {
            foreach (var column in columns.Where(c => !row[c.Index].IsNumber))
            {
                var (mark, doubtful) = Numbers.MarkOf(row[column.Index].Text);
                if (mark is null)
                {
                    doubtfulAt ??= doubtful ? (row, column) : null;
                }
                else if (shown is null)
                {
                    (shown, shownAt) = (mark, (row, column));
                }
                else if (shown != mark)
                {
                    var (first, where) = (shownAt!.Value, shownAt.Value.Row[shownAt.Value.Column.Index].Text);
                    faults.Add(FaultAt(row, column, $"one decimal mark in the whole file; line {first.Row.Line} has {Fault.Show(where)}"));
                    return shown.Value;
                }
            }
        }

        if (shown is null && doubtfulAt is { } doubt)
        {
            // Cells parted by commas cannot hold a decimal comma without quotes, so a point there is a decimal point.
            if (table.Delimiter == ',' && doubt.Row[doubt.Column.Index].Text.Contains('.', StringComparison.Ordinal))
            {
                return DecimalMark.Point;
            }

            faults.Add(FaultAt(doubt.Row, doubt.Column, "a number that can be read in one way only: say which is the decimal mark, with a line \"# decimal: comma\" or \"# decimal: point\" above the heading, or when importing"));
        }

        return shown ?? DecimalMark.Point;
    }

    private static Fault FaultAt(Row row, Bound column, string expected) =>
        new(row.Line, column.Index + 1, column.Heading, Fault.Show(row[column.Index].Text), expected);
}
