using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Tables;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>Workbooks, sound and hostile: a value or faults, never a crash.</summary>
public sealed class WorkbookTests
{
    private static readonly string Heading = Workbooks.Row(1, "from", "to", "mass [kg]", "at [UTC]");

    [Fact]
    public void Read_NumberCell_IsItselfWhateverTheDecimalMark()
    {
        var batch = Read(Workbooks.Of(("Sheet1", Heading + Workbooks.Row(2, "A", "B", 1234.5, "2025-06-01 06:00")))).Value;
        Assert.Equal(Mass.FromKilograms(1234.5m), ((Move)batch.Drafts[0]).Mass);
    }

    [Fact]
    public void Read_PerCentCell_IsWhatIsShown()
    {
        var rows = Workbooks.Row(1, "on", "at [UTC]", "method", "moisture [%]")
            + """<row r="2"><c r="A2" t="inlineStr"><is><t>B1</t></is></c><c r="B2" t="inlineStr"><is><t>2025-06-01 06:00</t></is></c><c r="C2" t="inlineStr"><is><t>NIR</t></is></c><c r="D2" s="2"><v>0.125</v></c></row>""";
        var batch = Read(Workbooks.Of(("x", rows)), ImportKind.Readings).Value;
        Assert.Equal(12.5m, ((Measure)batch.Drafts[0]).Value);
    }

    [Fact]
    public void Read_FormulaCell_GivesTheStoredValue()
    {
        var rows = Heading + """<row r="2"><c r="A2" t="inlineStr"><is><t>A</t></is></c><c r="B2" t="inlineStr"><is><t>B</t></is></c><c r="C2"><f>1000+500</f><v>1500</v></c><c r="D2" t="inlineStr"><is><t>2025-06-01 06:00</t></is></c></row>""";
        Assert.Equal(Mass.FromKilograms(1500m), ((Move)Read(Workbooks.Of(("x", rows))).Value.Drafts[0]).Mass);
    }

    [Theory]
    [InlineData("""<c r="C2" t="e"><v>#DIV/0!</v></c>""")]
    [InlineData("""<c r="C2"><f>1/0</f></c>""")]
    [InlineData("""<c r="C2"><v>1E+308</v></c>""")]
    [InlineData("""<c r="C2"><v>NaN</v></c>""")]
    [InlineData("""<c r="C2" t="b"><v>1</v></c>""")]
    [InlineData("""<c r="C2"><v>-5</v></c>""")]
    public void Read_CellThatIsNoMass_IsAFaultAtItsPlace(string cell)
    {
        var rows = Heading + $"""<row r="2"><c r="A2" t="inlineStr"><is><t>A</t></is></c><c r="B2" t="inlineStr"><is><t>B</t></is></c>{cell}<c r="D2" t="inlineStr"><is><t>2025-06-01 06:00</t></is></c></row>""";
        var fault = Assert.Single(Read(Workbooks.Of(("x", rows))).Faults);
        Assert.Equal((2, 3), (fault.Line, fault.Column));
    }

    [Fact]
    public void Read_ErrorInAnOptionalCell_IsNotTakenForEmpty()
    {
        var rows = Workbooks.Row(1, "code", "kind", "capacity [t]")
            + """<row r="2"><c r="A2" t="inlineStr"><is><t>B1</t></is></c><c r="B2" t="inlineStr"><is><t>bin</t></is></c><c r="C2" t="e"><v>#REF!</v></c></row>""";
        Assert.Contains(Read(Workbooks.Of(("x", rows)), ImportKind.Bins).Faults, f => f.Line == 2 && f.Column == 3);
    }

    [Fact]
    public void Read_TwoSheetsNeitherNamedForIt_AsksForOne()
    {
        var fault = Assert.Single(Read(Workbooks.Of(("one", Heading), ("two", Heading))).Faults);
        Assert.Equal("one, two", fault.Read);
    }

    [Fact]
    public void Read_WorkbookThatUnpacksToFarMore_IsRefusedBeforeItIsRead()
    {
        var bomb = Workbooks.Zip(("xl/workbook.xml", new string(' ', 40_000_000)));
        Assert.True(bomb.Length < 100_000);
        var parsed = Import.Read(new MemoryStream(bomb), ImportKind.Bins, new ImportOptions { Limits = new Limits { UnpackedBytes = 10_000_000 } });
        Assert.Contains("unpacks", Assert.Single(parsed.Faults).Read, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_EntitiesThatGrow_AreRefused()
    {
        var bomb = """<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><workbook>&b;</workbook>""";
        Assert.False(Read(Workbooks.Zip(("xl/workbook.xml", bomb))).Ok);
    }

    [Fact]
    public void Read_ARowFarDown_StaysWithinTheLimit()
    {
        var rows = Heading + """<row r="1048576"><c r="A1048576"><v>1</v></c></row>""";
        Assert.False(Read(Workbooks.Of(("x", rows))).Ok);
    }

    [Fact]
    public void Read_ACellFarRight_StaysWithinTheLimit()
    {
        var rows = Heading + """<row r="2"><c r="XFD2"><v>1</v></c></row>""";
        Assert.Contains("columns", Assert.Single(Read(Workbooks.Of(("x", rows))).Faults).Expected, StringComparison.Ordinal);
    }

    private static Parsed<Batch> Read(byte[] bytes, ImportKind kind = ImportKind.Movements) =>
        Import.Read(new MemoryStream(bytes), kind, new ImportOptions());
}
