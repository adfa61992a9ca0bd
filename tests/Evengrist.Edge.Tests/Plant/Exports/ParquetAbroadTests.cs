using System.Text.Json;
using Evengrist.Plant.Exports;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using NodaTime;
using ParquetSharp;

namespace Evengrist.Edge.Tests.Plant.Exports;

/// <summary>A list as Parquet, read by Apache Arrow's reader in C++ (through ParquetSharp), which has no line in common with the library that writes it.</summary>
public sealed class ParquetAbroadTests : IDisposable
{
    // Read from files: over a stream of ours the reader calls back from its finalizers, when that stream may be gone already.
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("evengrist-parquet-");

    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["America/Chicago"];
    private static readonly Row[] Rows =
    [
        new("P-1", Instant.FromUtc(2025, 11, 2, 7, 30, 15) + Duration.FromMilliseconds(250), 1.234m, 3, 510, new LocalDate(2025, 11, 2), true),
        new("=1+1, \"grün\" €", null, -0.5m, null, double.NaN, new LocalDate(1969, 12, 31), false),
        new("", Instant.FromUtc(1969, 12, 31, 23, 59, 59), null, long.MaxValue, 1e-9, null, null),
    ];

    [Fact]
    public async Task Parquet_ReadByArrow_HasColumnsTypesUnitsAndValues()
    {
        using var reader = new ParquetFileReader(await WriteAsync(Rows));
        Assert.Equal((1, 3L, 7), (reader.FileMetaData.NumRowGroups, reader.FileMetaData.NumRows, reader.FileMetaData.NumColumns));
        Assert.Equal(
            [
                ("code", PhysicalType.ByteArray, "String"), ("at", PhysicalType.Int64, "Micros in UTC"),
                ("mass, seen [kg = KGM]", PhysicalType.Double, "None"), ("bags [pieces = H87]", PhysicalType.Int64, "Int(bitWidth=64, isSigned=true)"), ("opening [µm = 4H]", PhysicalType.Double, "None"), ("day", PhysicalType.Int32, "Date"), ("released", PhysicalType.Boolean, "None"),
            ],
            Enumerable.Range(0, 7).Select(i => reader.FileMetaData.Schema.Column(i)).Select(c => (c.Name, c.PhysicalType, Words(c.LogicalType))));

        using var group = reader.RowGroup(0);
        Assert.Equal(["P-1", "=1+1, \"grün\" €", null!], All<string>(group, 0));
        Assert.Equal([new DateTime(2025, 11, 2, 7, 30, 15, 250), null, new DateTime(1969, 12, 31, 23, 59, 59)], All<DateTime?>(group, 1)); // UTC: half past one in Chicago came twice that night
        Assert.Equal([1.234, -0.5, null], All<double?>(group, 2));
        Assert.Equal([3, null, long.MaxValue], All<long?>(group, 3));
        Assert.Equal([510, null, 1e-9], All<double?>(group, 4)); // what is no number is left empty
        Assert.Equal([new Date(2025, 11, 2), new Date(1969, 12, 31), null], All<Date?>(group, 5));
        Assert.Equal([true, false, null], All<bool?>(group, 6));

        var metadata = reader.FileMetaData.KeyValueMetadata;
        Assert.Equal(("Some list", "America/Chicago"), (metadata["evengrist.list"], metadata["evengrist.zone"]));
        using var about = JsonDocument.Parse(metadata["evengrist.columns"]);
        var mass = about.RootElement[2];
        Assert.Equal(("mass, seen [kg = KGM]", "kg", "KGM", "seen"), (Text(mass, "column"), Text(mass, "unit"), Text(mass, "unece"), Text(mass, "origin")));
    }

    [Fact]
    public async Task Parquet_OfManyRowsOrNone_IsReadByArrowWhole()
    {
        using var none = new ParquetFileReader(await WriteAsync([]));
        Assert.Equal((0L, 7), (none.FileMetaData.NumRows, none.FileMetaData.NumColumns));
        using var many = new ParquetFileReader(await WriteAsync(Enumerable.Range(0, 45_000).Select(i => Rows[0] with { Bags = i })));
        Assert.Equal((3, 45_000L), (many.FileMetaData.NumRowGroups, many.FileMetaData.NumRows)); // 20,000 to a group
        var bags = Enumerable.Range(0, 3).SelectMany(g => BagsOf(many, g)).ToArray();
        Assert.Equal(Enumerable.Range(0, 45_000).Select(i => (long?)i), bags);
    }

    public void Dispose() => folder.Delete(recursive: true);

    private static long?[] BagsOf(ParquetFileReader reader, int group)
    {
        using var rows = reader.RowGroup(group);
        return All<long?>(rows, 3);
    }

    private static T[] All<T>(RowGroupReader group, int column)
    {
        using var values = group.Column(column);
        using var read = values.LogicalReader<T>();
        return read.ReadAll((int)group.MetaData.NumRows);
    }

    private static string Words(LogicalType type) => type is TimestampLogicalType { IsAdjustedToUtc: true } moment ? $"{moment.TimeUnit} in UTC" : type.ToString() ?? "";

    private static string? Text(JsonElement of, string name) => of.GetProperty(name).GetString();

    private async Task<string> WriteAsync(IEnumerable<Row> rows)
    {
        var path = Path.Combine(folder.FullName, $"{Guid.NewGuid()}.parquet");
        await using var stream = File.Create(path);
        await ListWriter.WriteAsync(new ListOf<Row>().Text("code", r => r.Code).Moment("at", r => r.At).Mass("mass", ListOrigin.Seen, r => r.Kilograms is { } kg ? Mass.FromKilograms(kg) : null).Whole("bags", r => r.Bags, ListUnit.Piece)
            .Number("opening", ListOrigin.Stated, ListUnit.Micrometre, r => r.Opening is { } o && double.IsFinite(o) ? (decimal)o : null).Day("day", r => r.Day).YesNo("released", r => r.Released).List("some-list", "Some list", rows), ListFormat.Parquet, Zone, stream);
        return path;
    }

    private sealed record Row(string Code, Instant? At, decimal? Kilograms, long? Bags, double? Opening, LocalDate? Day, bool? Released);
}
