using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>The cells of a row that hold readings, with the uncertainties beside them.</summary>
internal static class ReadingCells
{
    /// <summary>A draft for each cell that holds a reading.</summary>
    /// <param name="row">The row.</param>
    /// <param name="on">Code of the place.</param>
    /// <param name="at">When the sample was taken.</param>
    /// <param name="key">Beginning of the keys.</param>
    public static IReadOnlyList<Draft> Read(RowReader row, string on, Instant at, string key)
    {
        var (method, instrument) = (row.Text("method"), row.Text("instrument"));
        var drafts = new List<Draft>();
        var given = row.Columns.Where(b => b.Column is ReadingColumn { IsUncertainty: false } && row.Has(b.Column.Name)).ToArray();
        if (given.Length > 0 && !row.Has("method") && !row.Demands("method"))
        {
            row.Fault("method", "how the readings were taken: NIR, oven, combustion …");
        }

        foreach (var bound in given)
        {
            var column = (ReadingColumn)bound.Column;
            var uncertainty = row.Number("± " + column.Name);
            if (uncertainty is < 0m)
            {
                row.Fault("± " + column.Name, "a standard uncertainty of at least zero");
            }

            if (row.Number(column.Name) is { } value)
            {
                var (unit, basis) = ReadingColumn.Split(bound.Unit);
                var draft = new Measure($"{key} {column.Name}", on, at, column.What, value, unit, basis, method, instrument, uncertainty);
                if (Ledger.Readings.Fault(new Reading(default, default, at, column.What, value, unit, basis, method)) is { } wrong)
                {
                    row.Fault(column.Name, $"a reading that can be. {wrong}");
                }

                drafts.Add(draft);
            }
        }

        foreach (var bound in row.Columns.Where(b => b.Column is ReadingColumn { IsUncertainty: true } && row.Has(b.Column.Name) && !row.Has(b.Column.Name[2..])))
        {
            row.Fault(bound.Column.Name, "nothing, since there is no reading beside it");
        }

        return drafts;
    }
}
