using Evengrist.Demo;
using Evengrist.Milling.Sheet;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The flow sheets of the demonstration mill. That their sizes are a mill's: figures from memory of the trade, named beside each.</summary>
public sealed class HouseFlowSheetTests
{
    [Theory]
    [InlineData('A', 31, "1B 1M 1MF 1T 2B 2M 3B 3M 4B 4M 5B 5M 6M 7M BRD SHD SZ1 SZ2")]
    [InlineData('B', 17, "1B 1M 2B 2M 3B 3M 4B 4M 5M BSD SZ1 SZ2")]
    public void Of_AUnit_CanBeMilledOnAndMakesItsStreams(char unit, int passages, string flours)
    {
        var sheet = HouseFlowSheets.Of(unit);
        Assert.Empty(sheet.Faults());
        Assert.Equal(passages, sheet.Passages.Count);
        Assert.Equal(flours, string.Join(' ', sheet.Products.Where(p => p.Kind is ProductKind.Flour).Select(p => p.Code).Order(StringComparer.Ordinal)));
        Assert.Equal([ProductKind.Bran, ProductKind.Wheatfeed, ProductKind.Germ], sheet.Products.Select(p => p.Kind).Where(k => k is not ProductKind.Flour));
    }

    // Roll length 10 to 12 mm for each 100 kg in 24 h on hard wheat, 11 to 14 on soft; sifter cloth 0.05 to 0.08 m² for the same [memory of the trade].
    [Theory]
    [InlineData('A', 420, 10, 12)]
    [InlineData('B', 180, 11, 12)]
    public void Of_AUnit_HasRollsAndClothsForWhatItMills(char unit, int tonnesPerDay, double least, double most)
    {
        var size = FlowSheetSize.Of(HouseFlowSheets.Of(unit));
        Assert.Equal(tonnesPerDay, size.TonnesPerDay);
        Assert.InRange(size.RollMillimetresPer100Kilograms!.Value, least, most);
        Assert.InRange(size.BreakMillimetres / size.RollMillimetres, 0.35, 0.45); // Breaks 35 to 45 % of the roll length [memory of the trade].
        Assert.InRange(size.SifterSquareMetresPer100Kilograms!.Value, 0.05, 0.08);
    }

    [Fact]
    public void Loops_OfTheUnits_AreTheRecyclesDrawnIntoThem()
    {
        Assert.Equal(["S1 P3", "S2 M1 P4", "M4 T1", "M7 SF2 G5"], HouseFlowSheets.Of('A').Loops().Select(l => string.Join(' ', l)));
        Assert.Equal(["S1 S2 M1 P2 G1", "M5 SF G2"], HouseFlowSheets.Of('B').Loops().Select(l => string.Join(' ', l)));
    }

    [Fact]
    public void Of_AUnit_IsStoredAsItIsWritten()
    {
        foreach (var unit in HouseFlowSheets.Units)
        {
            using var stored = typeof(HouseFlowSheets).Assembly.GetManifestResourceStream($"unit-{char.ToLowerInvariant(unit)}.json")!;
            using var reader = new StreamReader(stored);
            Assert.Equal(reader.ReadToEnd(), FlowSheetJson.Write(HouseFlowSheets.Of(unit)));
        }
    }

    [Fact]
    public void Of_AUnitThatIsNot_IsRefused() => Assert.Contains("no unit C", Assert.Throws<ArgumentException>(() => HouseFlowSheets.Of('C')).Message, StringComparison.Ordinal);
}
