using System.Text.Json;
using Evengrist.Quantities.Lists;
using NodaTime;
using Parquet;
using Parquet.Schema;

namespace Evengrist.Plant.Exports;

/// <summary>A list as Parquet: a column for each column, named by its heading with unit and basis; moments in UTC to the microsecond. Unit, code, basis and origin of each column stand in the metadata of the file as JSON.</summary>
internal static class ListParquet
{
    public const string AboutKey = "evengrist.columns";
    private const int GroupRows = 20_000;

    public static async Task<long> WriteAsync(TakenList list, DateTimeZone zone, Stream stream, CancellationToken stopping)
    {
        var columns = list.Columns.Select(ParquetColumn.Of).ToArray();
        var schema = new ParquetSchema([.. columns.Select(c => (Field)c.Field)]);
        var writer = await ParquetWriter.CreateAsync(schema, stream, new ParquetOptions { CompressionMethod = CompressionMethod.Snappy }, cancellationToken: stopping).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            writer.CustomMetadata = new Dictionary<string, string> { ["evengrist.list"] = list.Title, ["evengrist.zone"] = zone.Id, [AboutKey] = About(list) };
            long count = 0;
            foreach (var rows in list.Rows.Chunk(GroupRows))
            {
                using var group = writer.CreateRowGroup();
                for (var i = 0; i < columns.Length; i++)
                {
                    stopping.ThrowIfCancellationRequested();
                    await columns[i].WriteAsync(group, rows, i, stopping).ConfigureAwait(false);
                }

                group.CompleteValidate();
                count += rows.Length;
            }

            return count;
        }
    }

    private static string About(TakenList list) => JsonSerializer.Serialize(list.Columns.Select(c => new Dictionary<string, string>
    {
        ["column"] = c.Head, ["heading"] = c.Heading, ["unit"] = c.Unit?.Symbol ?? "", ["unece"] = c.Unit?.Code ?? "", ["basis"] = c.Basis, ["origin"] = c.Origin.ToString().ToLowerInvariant(),
    }));
}
