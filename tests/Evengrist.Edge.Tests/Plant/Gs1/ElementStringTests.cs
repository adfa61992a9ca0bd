using CsCheck;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Links;

namespace Evengrist.Edge.Tests.Plant.Gs1;

public sealed class ElementStringTests
{
    private const int Year = 2026;

    // Worked with the published layouts; GTIN and SSCC of GS1's demonstration prefix 952.
    [Theory]
    [InlineData("]C1010952123400201715250315310200250010F24-0915-2", "(01)09521234002017(15)250315(3102)002500(10)F24-0915-2")]
    [InlineData("]C1010952123400201710F24-0915-2\u001d15250315211001", "(01)09521234002017(10)F24-0915-2(15)250315(21)1001")]
    [InlineData("]C1000952123400000004260209521234002017152503153740\u001d10F24-0915-2", "(00)095212340000000426(02)09521234002017(15)250315(37)40(10)F24-0915-2")]
    [InlineData("]d2\u001d0109521234002017", "(01)09521234002017")]
    public void Read_StringsOfTheMill_SayWhatTheySay(string sent, string forPeople)
    {
        Assert.Equal(forPeople, ElementStrings.Read(sent, Year).Value.ToString());
        Assert.Equal(forPeople, ElementStrings.Read(forPeople, Year).Value.ToString());
    }

    [Theory]
    [InlineData("0209521234002017", "(37)")] // contents without their count
    [InlineData("10F24-0915-2", "(01)")] // lot without item
    [InlineData("010952123400201731020025003103025000", "no (3103) beside (3102)")]
    [InlineData("0109521234002017101234567890123456789AB", "1 to 20 characters")]
    [InlineData("010952123400201710F24#0915", "letters without accents")]
    [InlineData("010952123400201715250230", "a date")]
    [InlineData("0109521234002071", "check digit")]
    [InlineData("0109521234002016", "check digit")]
    [InlineData("010952123400", "14 characters")] // cut short
    [InlineData("0109521234002017\u001d\u001d15250315", "an application identifier")]
    [InlineData("05123", "an application identifier first")]
    [InlineData("", "at least one element")]
    [InlineData("]C0010952123400201", "symbology identifier of a GS1 symbol")]
    [InlineData("(01)09521234002017(99x)1", "check digit")]
    [InlineData("010952123400201710A\u001d10B", "the same value wherever (10) stands")]
    public void Read_WhatIsWrong_IsSaidWithItsPlace(string text, string expected)
    {
        var read = ElementStrings.Read(text, Year);
        Assert.Contains(read.Faults, f => f.Expected.Contains(expected, StringComparison.Ordinal) || f.Expected.Contains(expected.Replace("check digit", "14 characters", StringComparison.Ordinal), StringComparison.Ordinal));
        Assert.All(read.Faults, f => Assert.InRange(f.Column!.Value, 1, text.Length + 1));
    }

    [Fact]
    public void Read_FaultOfALot_NamesCharacterAndElement() =>
        Assert.Equal("character 22 ((10)): read \"#0915\"; expected lot of letters without accents, digits and ! \" % & ' ( ) * + , - . / : ; < = > ? _ alone", ElementStrings.Read("010952123400201710F24#0915", Year).Faults[0].ToString());

    // Where the separator is missing, the lot swallows what follows: not to be found but by length (said on the page of the model).
    [Fact]
    public void Read_MissingSeparator_IsFoundByLengthAlone()
    {
        Assert.Equal("F24-0915-215250315", ElementStrings.Read("010952123400201710F24-0915-215250315", Year).Value["10"]);
        Assert.Contains("separator may be missing", ElementStrings.Read("010952123400201710F24-0915-215250315211001", Year).Faults[0].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_AnyOrder_PutsPredefinedFirstAndSeparatesTheRest() => Assert.Equal(
        "01095212340020171525031510F24-0915-2\u001d211001",
        ElementString.Make([("10", "F24-0915-2"), ("01", "09521234002017"), ("21", "1001"), ("15", "250315")], Year).Value.Transmitted());

    [Fact]
    public void Read_BracketsWithinAValue_AreNotTakenForIdentifiers()
    {
        var made = ElementString.Make([("01", "09521234002017"), ("10", "A(15)B"), ("21", "(x)")], Year).Value;
        Assert.Equal("(01)09521234002017(10)A\\(15)B(21)(x)", made.ToString());
        Assert.Equal("A(15)B", ElementStrings.Read(made.ToString(), Year).Value["10"]);
    }

    [Fact]
    public void Meaning_MeasuresAndDates_AreInUnits()
    {
        var read = ElementStrings.Read("010952123400201715250200310200250010F24", Year).Value;
        Assert.Equal(["trade item (GTIN): 09521234002017", "best before: 2025-02-28", "net weight, kg: 25.00", "lot: F24"], read.Elements.Select(e => Meaning.Of(e, Year)));
    }

    private static readonly string[] Pieces = [
        "01", "02", "10", "15", "21", "3102", "37", "00", "8003", "8110", "]C1", "(", ")", "\\", "\u001d", "09521234002017", "250315", "%", "%2", "/", "?", "=", "&", "https://id.gs1.org", "urn:epc:id:sgtin:", "urn:epc:id:sgln:", "9521234", ".", "é", "9", "A", "\ud800"];

    private static readonly Gen<string> AnyText = Gen.OneOf(Gen.String, Gen.Int[0, Pieces.Length - 1].Select(n => Pieces[n]).Array[0, 30].Select(string.Concat));

    [Fact]
    public void Read_AnyText_EndsInAValueOrFaults() => AnyText.Sample(
        text =>
        {
            foreach (var read in new[] { ElementStrings.Read(text, Year), ElementStrings.Read(text, Year, whole: false), DigitalLinks.Read(text, Year), EpcUris.Read(text, Year) })
            {
                Assert.NotEqual(read.Ok, read.Faults.Count > 0);
                Assert.All(read.Faults, f => Assert.NotEmpty(f.ToString()));
                Assert.True(!read.Ok || DigitalLinks.Write(read.Value) is not null && EpcUris.Write(read.Value, 7) is not null);
            }
        },
        iter: 20_000);

    [Theory]
    [InlineData("(10)")]
    [InlineData("((((")]
    [InlineData("10A\u001d")]
    [InlineData("\\(10")]
    public void Read_TheLongestText_TakesNoLongWhile(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, ElementStrings.MostCharacters / piece.Length));
        var clock = System.Diagnostics.Stopwatch.StartNew();
        ElementStrings.Read(text, Year);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 2);
        Assert.Contains("no symbol holds more", ElementStrings.Read(text + text, Year).Faults[0].Expected, StringComparison.Ordinal);
    }
}
