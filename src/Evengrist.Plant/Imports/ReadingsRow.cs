using Evengrist.Ledger;

namespace Evengrist.Plant.Imports;

/// <summary>A row of a readings file: one sample, one or more readings.</summary>
internal static class ReadingsRow
{
    public static IReadOnlyList<Draft> Read(RowReader row)
    {
        var on = row.Text("on");
        var at = row.Time("at") ?? default;
        var sample = row.Text("sample");
        var key = $"{on} {at}" + (sample.Length > 0 ? $" {sample}" : "") + $" {row.Text("method")} {row.Text("instrument")}".TrimEnd();
        var drafts = ReadingCells.Read(row, on, at, key);
        if (drafts.Count == 0 && !row.Columns.Any(b => b.Column is ReadingColumn && row.Has(b.Column.Name)))
        {
            row.Fault("on", "at least one reading in the row");
        }

        return drafts;
    }
}
