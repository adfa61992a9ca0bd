using Evengrist.Quantities.Lists;
using NodaTime;

namespace Evengrist.Plant.Exports;

/// <summary>Writes a list that is taken out, row by row: a long list is never held whole.</summary>
public static class ListWriter
{
    /// <summary>Writes it.</summary>
    /// <param name="list">The list; its rows are read once.</param>
    /// <param name="format">How.</param>
    /// <param name="zone">The mill's time zone: moments are written with its offset, in a workbook on its clock.</param>
    /// <param name="stream">Where to; stays open. For a workbook and for Parquet one that can go back.</param>
    /// <param name="stopping">Stops it.</param>
    /// <returns>How many rows were written.</returns>
    public static Task<long> WriteAsync(TakenList list, ListFormat format, DateTimeZone zone, Stream stream, CancellationToken stopping = default)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(zone);
        ArgumentNullException.ThrowIfNull(stream);
        return format == ListFormat.Csv ? ListCsv.WriteAsync(list, zone, stream, stopping)
            : format == ListFormat.Xlsx ? ListXlsx.WriteAsync(list, zone, stream, stopping)
            : format == ListFormat.Parquet ? ListParquet.WriteAsync(list, zone, stream, stopping)
            : throw new ArgumentException($"Say {ListFormat.Words}.", nameof(format));
    }
}
