using System.Text;
using Evengrist.Plant.Tables;

namespace Evengrist.Plant.Cases;

/// <summary>Rows of a table below documented headings: all of them, or every fault with line and column.</summary>
internal static class CsvRows
{
    private static readonly Limits Most = new() { Bytes = 2 * 1024 * 1024, Rows = 10_000, Columns = 12 };

    /// <summary>Reads them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="columns">The columns it may have.</param>
    /// <param name="rowsAre">What stands in a row: <c>one for each mill</c>.</param>
    /// <param name="row">Makes a value of a row, or notes its faults.</param>
    public static Parsed<IReadOnlyList<T>> Of<T>(string text, IReadOnlyList<FileColumn> columns, string rowsAre, Func<FileLine, T> row)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return Of(stream, Most, columns, rowsAre, row);
    }

    /// <summary>Reads them from a file, CSV text or a workbook.</summary>
    /// <param name="stream">The file.</param>
    /// <param name="most">How large it may be.</param>
    /// <param name="columns">The columns it may have.</param>
    /// <param name="rowsAre">What stands in a row: <c>one for each mill</c>.</param>
    /// <param name="row">Makes a value of a row, or notes its faults.</param>
    public static Parsed<IReadOnlyList<T>> Of<T>(Stream stream, Limits most, IReadOnlyList<FileColumn> columns, string rowsAre, Func<FileLine, T> row) => TableReader.Read(stream, null, most).Then(table =>
    {
        List<Fault> faults = [];
        var at = FileHeadings.Read(table, columns, faults);
        if (faults.Count > 0)
        {
            return Parsing.Failed<IReadOnlyList<T>>(faults);
        }

        var mark = FileHeadings.Mark(table);
        T[] rows = [.. table.Rows.Select(r => row(new FileLine(r, at, mark, faults)))];
        return faults.Count > 0 ? Parsing.Failed<IReadOnlyList<T>>([.. faults.Take(most.Faults)])
            : rows.Length == 0 ? Parsing.Failed<IReadOnlyList<T>>(Fault.OfFile("a heading alone", $"rows below it, {rowsAre}"))
            : Parsing.Got<IReadOnlyList<T>>(rows);
    });
}
