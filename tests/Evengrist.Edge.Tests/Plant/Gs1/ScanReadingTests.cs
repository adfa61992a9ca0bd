using Evengrist.Plant.Gs1;

namespace Evengrist.Edge.Tests.Plant.Gs1;

public sealed class ScanReadingTests
{
    private const int Year = 2026;

    // Derived: numbers of the worked case of docs/model/codes.md (GS1's demonstration prefix 952), in every form they come in.
    [Theory]
    [InlineData("]C100095212340000000426", "095212340000000426", null, null)]
    [InlineData("(00)095212340000000426", "095212340000000426", null, null)]
    [InlineData("095212340000000426", "095212340000000426", null, null)]
    [InlineData("https://id.gs1.org/00/095212340000000426", "095212340000000426", null, null)]
    [InlineData("urn:epc:id:sscc:9521234.0000000042", "095212340000000426", null, null)]
    [InlineData("]C10209521234002017\u001d3740\u001d10WB-251007-3", null, "09521234002017", "WB-251007-3")]
    [InlineData("(01)09521234002017(10)WB-251007-3", null, "09521234002017", "WB-251007-3")]
    [InlineData("9521234002017", null, "09521234002017", null)]
    public void Of_EveryForm_GivesItsKeys(string text, string? unit, string? item, string? lot)
    {
        var keys = ScanReading.Of(text + "\r\n", Year).Keys!;
        Assert.Equal((unit, item, lot, null), (keys.Unit?.Digits, keys.Item?.Digits, keys.Lot, keys.Own));
    }

    [Fact]
    public void Of_BadTexts_SayWhereAndWhat()
    {
        Assert.Contains("check digit", $"{Assert.Single(ScanReading.Of("095212340000000427", Year).Faults)}", StringComparison.Ordinal);
        var cut = ScanReading.Of("]C1000952123400000", Year);
        Assert.Null(cut.Keys);
        Assert.Contains("18 characters", $"{cut.Faults[0]}", StringComparison.Ordinal);
        Assert.Equal("P-WB-250918-0007", ScanReading.Of(" P-WB-250918-0007 ", Year).Keys!.Own);
        Assert.NotEmpty(ScanReading.Of("P-WB-250918-0007", Year).Faults);
        Assert.Null(ScanReading.Of("  ", Year).Keys);
        Assert.Null(ScanReading.Of("(01)", Year).Keys);
        Assert.Null(ScanReading.Of(new string('x', 5000), Year).Keys);
    }
}
