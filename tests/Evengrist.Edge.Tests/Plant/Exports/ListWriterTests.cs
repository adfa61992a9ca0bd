using System.Text;
using System.Text.Json;
using Evengrist.Plant.Epcis;
using Evengrist.Plant.Exports;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using ExcelDataReader;
using NodaTime;
using Parquet;

namespace Evengrist.Edge.Tests.Plant.Exports;

/// <summary>One list in every form, read back by another library where there is one.</summary>
public sealed class ListWriterTests
{
    // In Chicago the clock was put back at 07:00 UTC of 2 November 2025: half past one came twice (time zone database, rule US since 2007).
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["America/Chicago"];
    private static readonly Instant First = Instant.FromUtc(2025, 11, 2, 6, 30);
    private static readonly Instant Second = Instant.FromUtc(2025, 11, 2, 7, 30, 15);
    private static readonly Row[] Rows = [new("P-1", First, 1.234m, 3, new LocalDate(2025, 11, 2), true), new("=cmd|' /C calc'!A0", Second, -0.5m, null, null, false), new("a \"quoted\", grün\u0001", null, null, 5, new LocalDate(2024, 2, 29), null)];

    [Fact]
    public async Task Csv_Written_HasUnitsCodesOffsetsAndNoFormula()
    {
        var bytes = await Write(ListFormat.Csv);
        Assert.Equal(Encoding.UTF8.GetPreamble(), bytes[..3]);
        var lines = Encoding.UTF8.GetString(bytes[3..]).Split("\r\n");
        Assert.Equal("""code,at,"mass, seen [kg = KGM]",bags [pieces = H87],day,released""", lines[0]);
        Assert.Equal("P-1,2025-11-02T01:30:00-05:00,1.234,3,2025-11-02,yes", lines[1]);
        Assert.Equal("'=cmd|' /C calc'!A0,2025-11-02T01:30:15-06:00,-0.5,,,no", lines[2]);
        Assert.Equal("\"a \"\"quoted\"\", grün\u0001\",,,5,2024-02-29,", lines[3]);
    }

    [Fact]
    public async Task Xlsx_ReadBackByAnotherLibrary_SaysTheSame()
    {
        var book = await Write(ListFormat.Xlsx);
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(book));
        Assert.Equal("some-list", reader.Name);
        Assert.True(reader.Read());
        Assert.Equal(["code", "at [America/Chicago]", "mass, seen [kg = KGM]", "bags [pieces = H87]", "day", "released"], Enumerable.Range(0, 6).Select(reader.GetString));
        Assert.True(reader.Read());
        Assert.Equal(["P-1", new DateTime(2025, 11, 2, 1, 30, 0), 1.234, 3.0, new DateTime(2025, 11, 2), true], Enumerable.Range(0, 6).Select(reader.GetValue));
        Assert.True(reader.Read());
        Assert.Equal("=cmd|' /C calc'!A0", reader.GetValue(0)); // a text, no formula
        Assert.True(reader.Read());
        Assert.Equal("a \"quoted\", grün\uFFFD", reader.GetValue(0));
        Assert.False(reader.Read());
        Assert.True(reader.NextResult());
        var about = new List<string>();
        while (reader.Read())
        {
            about.Add(string.Join("|", Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetValue(i))));
        }

        Assert.Contains("mass|kg|KGM||seen|number", about);
    }

    [Fact]
    public async Task Parquet_ReadBack_SaysTheSameInUtc()
    {
        using var file = new MemoryStream(await Write(ListFormat.Parquet));
        await using var reader = await ParquetReader.CreateAsync(file);
        using var group = reader.OpenRowGroupReader(0);
        var fields = reader.Schema.GetDataFields();
        Assert.Equal((1, 3), (reader.RowGroupCount, (int)group.RowCount));
        Assert.Equal("mass, seen [kg = KGM]", fields[2].Name);
        var (moments, masses, counts, words) = (new DateTime?[3], new double?[3], new long?[3], new string?[3]);
        await group.ReadAsync(fields[0], words.AsMemory()!);
        await group.ReadAsync<DateTime>(fields[1], moments.AsMemory());
        await group.ReadAsync<double>(fields[2], masses.AsMemory());
        await group.ReadAsync<long>(fields[3], counts.AsMemory());
        Assert.Equal(Rows.Select(r => r.Code), words);
        Assert.Equal([First.ToDateTimeUtc(), Second.ToDateTimeUtc(), null], moments);
        Assert.Equal([1.234, -0.5, null], masses);
        Assert.Equal([3L, null, 5L], counts);
        using var about = JsonDocument.Parse(reader.CustomMetadata["evengrist.columns"]);
        Assert.Equal(("KGM", "seen"), (about.RootElement[2].GetProperty("unece").GetString(), about.RootElement[2].GetProperty("origin").GetString()));
    }

    [Theory]
    [InlineData("csv")]
    [InlineData("xlsx")]
    [InlineData("parquet")]
    public async Task Empty_List_HasItsHeadings(string form)
    {
        using var stream = new MemoryStream();
        Assert.Equal(0, await ListWriter.WriteAsync(Columns().List("some-list", "Some list", []), ListFormat.Find(form)!, Zone, stream));
        var headings = await HeadingsAsync(stream.ToArray(), form);
        Assert.Equal(["code", "mass, seen [kg = KGM]", "bags [pieces = H87]", "day", "released"], headings.Where((_, i) => i != 1)); // the second says the zone in a workbook
    }

    // Code and name as annex I of UN/ECE Recommendation 20 has them: read in the copy of edi3 (recommendation-20/data/annexI.csv, public domain) and, for those further down than mass there, in the code list of un-ece-recommendation 0.1.1.
    [Theory]
    [InlineData("kg", "KGM", "kilogram")]
    [InlineData("t", "TNE", "tonne")]
    [InlineData("g", "GRM", "gram")]
    [InlineData("%", "P1", "per cent")]
    [InlineData("°C", "CEL", "degree Celsius")]
    [InlineData("pieces", "H87", "piece")]
    [InlineData("s", "SEC", "second [unit of time]")]
    [InlineData("min", "MIN", "minute [unit of time]")]
    [InlineData("h", "HUR", "hour")]
    [InlineData("days", "DAY", "day")]
    [InlineData("t/h", "E18", "tonne per hour")]
    [InlineData("kg/day", "F30", "kilogram per day")]
    [InlineData("mg/kg", "NA", "milligram per kilogram")]
    [InlineData("µg/kg", "J33", "microgram per kilogram")]
    [InlineData("ppm", "59", "part per million")]
    [InlineData("µm", "4H", "micrometre (micron)")]
    [InlineData("mm", "MMT", "millimetre")]
    [InlineData("m", "MTR", "metre")]
    [InlineData("m²", "MTK", "square metre")]
    [InlineData("ha", "H18", "square hectometre")]
    [InlineData("m/s", "MTS", "metre per second")]
    [InlineData("1/cm", "E90", "reciprocal centimetre")]
    [InlineData("mL", "MLT", "millilitre")]
    [InlineData("people", "IE", "person")]
    public void Unit_WithACode_IsThatOfTheRecommendation(string symbol, string code, string name)
    {
        Assert.Equal(code, ListUnit.Of(symbol).Code);
        Assert.Equal((name, false), (UnitCode.Find(code)?.Name, UnitCode.Find(code)?.Deleted));
    }

    [Fact]
    public void Units_WithACode_AreAllHeldAgainstTheRecommendationAndNoBushelIsAMass()
    {
        Assert.Equal(24, ListUnit.Coded.Select(u => u.Code).Distinct().Count()); // each of them stands in the check above
        Assert.Equal((1m, 1000m, 0.001m), (UnitCode.Find(ListUnit.Kilogram.Code)!.Kilograms, UnitCode.Find(ListUnit.Tonne.Code)!.Kilograms, UnitCode.Find(ListUnit.Gram.Code)!.Kilograms));
        Assert.Equal(("", ""), (ListUnit.TradeBushel.Code, ListUnit.GramsPerTonne.Code));
        Assert.Equal(("KGM", "", "", ""), (ListUnit.Of("kg").Code, ListUnit.Of("bu").Code, ListUnit.Of("lb/bu").Code, ListUnit.Of("kg/hL").Code));
    }

    [Fact]
    public void Heading_Twice_IsRefused() => Assert.Throws<ArgumentException>(() => Columns().Text("code", r => r.Code));

    private static ListOf<Row> Columns() => new ListOf<Row>().Text("code", r => r.Code).Moment("at", r => r.At).Mass("mass", ListOrigin.Seen, r => r.Kilograms is { } kg ? Mass.FromKilograms(kg) : null)
        .Whole("bags", r => r.Bags, ListUnit.Piece).Day("day", r => r.Day).YesNo("released", r => r.Released);

    private static async Task<string[]> HeadingsAsync(byte[] file, string form)
    {
        using var stream = new MemoryStream(file);
        if (form == "parquet")
        {
            await using var parquet = await ParquetReader.CreateAsync(stream);
            return [.. parquet.Schema.GetDataFields().Select(f => f.Name)];
        }

        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var reader = form == "csv" ? ExcelReaderFactory.CreateCsvReader(stream) : ExcelReaderFactory.CreateOpenXmlReader(stream);
        Assert.True(reader.Read());
        return [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];
    }

    private static async Task<byte[]> Write(ListFormat format)
    {
        using var stream = new MemoryStream();
        Assert.Equal(3, await ListWriter.WriteAsync(Columns().List("some-list", "Some list", Rows), format, Zone, stream));
        return stream.ToArray();
    }

    private sealed record Row(string Code, Instant? At, decimal? Kilograms, long? Bags, LocalDate? Day, bool? Released);
}
