using System.Text;
using Evengrist.Ledger;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>The same facts however the file is written, and a fault where it can be read in two ways.</summary>
public sealed class DialectTests
{
    [Theory]
    [InlineData(',', "1234.5", "")]
    [InlineData(';', "1234,5", "")]
    [InlineData(';', "1.234,5", "")]
    [InlineData(';', "1 234,5", "")]
    [InlineData('\t', "1'234.5", "")]
    [InlineData('\t', "1,234.5", "")]
    [InlineData(';', "1234,500", "# decimal: comma\n")]
    [InlineData(';', "1.234,500", "# decimal: comma\n")]
    public void Read_AnyDialect_IsTheSameMovement(char separator, string mass, string declared)
    {
        var text = declared + string.Join(separator, "from", "to", "mass [kg]", "at [UTC]") + "\n" + string.Join(separator, "A", "B", mass, "2025-06-01 06:00") + "\n";
        foreach (var bytes in new[] { Encoding.UTF8.GetBytes(text), [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)], Encoding.UTF8.GetBytes(text.Replace("\n", "\r\n", StringComparison.Ordinal)) })
        {
            var move = (Move)Assert.Single(Import.Read(new MemoryStream(bytes), ImportKind.Movements, new ImportOptions()).Value.Drafts);
            Assert.Equal(new Move("A to B 2025-06-01T06:00:00Z", "A", "B", Mass.FromGrams(1_234_500), InstantPattern.ExtendedIso.Parse("2025-06-01T06:00:00Z").Value), move);
        }
    }

    [Fact]
    public void Read_NumberThatCanMeanTwoThings_AsksWhichMark()
    {
        const string Text = "from;to;mass [kg];at [UTC]\nA;B;26.340;2025-06-01 06:00\n";
        var fault = Assert.Single(SmallMill.Read(Text, ImportKind.Movements).Faults);
        Assert.Equal((2, 3, "26.340"), (fault.Line, fault.Column, fault.Read));
        Assert.Contains("# decimal: comma", fault.Expected, StringComparison.Ordinal);
        Mass As(DecimalMark mark) => ((Move)SmallMill.Read(Text, ImportKind.Movements, new ImportOptions { Decimal = mark }).Value.Drafts[0]).Mass;
        Assert.Equal(Mass.FromKilograms(26_340m), As(DecimalMark.Comma));
        Assert.Equal(Mass.FromGrams(26_340), As(DecimalMark.Point));
    }

    [Fact]
    public void Read_BothMarksInOneFile_IsAFaultThatNamesTheOtherLine()
    {
        var fault = Assert.Single(SmallMill.Read("from;to;mass [kg];at [UTC]\nA;B;12,5;2025-06-01 06:00\nA;C;12.5;2025-06-01 06:00\n", ImportKind.Movements).Faults);
        Assert.Equal((3, 3), (fault.Line, fault.Column));
        Assert.Contains("line 2", fault.Expected, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at [ISO 8601 with offset]", "2025-07-09T14:05-06:00", "2025-07-09T20:05:00Z")]
    [InlineData("at [ISO 8601 with offset]", "2025-07-09T14:05:30.25Z", "2025-07-09T14:05:30.25Z")]
    [InlineData("at [Europe/Paris]", "2025-07-09 14:05", "2025-07-09T12:05:00Z")]
    [InlineData("at [Europe/Paris]", "2025-01-09 14:05:01", "2025-01-09T13:05:01Z")]
    [InlineData("at [Europe/Paris]", "2025-10-26T02:30+02:00", "2025-10-26T00:30:00Z")]
    public void Read_Time_IsTheMoment(string heading, string cell, string utc)
    {
        var move = (Move)SmallMill.Read($"from,to,mass [kg],{heading}\nA,B,1,{cell}\n", ImportKind.Movements).Value.Drafts[0];
        Assert.Equal(InstantPattern.ExtendedIso.Parse(utc).Value, move.At);
    }

    [Theory]
    [InlineData("2025-10-26 02:30", "twice")] // Clocks of the EU go back on the last Sunday of October at 01:00 UTC (Directive 2000/84/EC).
    [InlineData("2025-03-30 02:30", "forward")] // … and forward on the last Sunday of March.
    [InlineData("2025-02-31 10:00", "year first")]
    [InlineData("31/02/2025 10:00", "year first")]
    [InlineData("09.07.2025 14:05", "year first")]
    [InlineData("2025-07-09", "year first")]
    public void Read_TimeThatIsNone_SaysWhy(string cell, string expected)
    {
        var fault = Assert.Single(SmallMill.Read($"from,to,mass [kg],at [Europe/Paris]\nA,B,1,{cell}\n", ImportKind.Movements).Faults);
        Assert.Equal((2, 4), (fault.Line, fault.Column));
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LocalTimes_NeedAZoneChosenOrDeclared()
    {
        const string Text = "from,to,mass [kg],at [local]\nA,B,1,2025-07-09 14:05\n";
        Assert.Contains("offset", Assert.Single(SmallMill.Read(Text, ImportKind.Movements).Faults).Expected, StringComparison.Ordinal);
        var paris = DateTimeZoneProviders.Tzdb["Europe/Paris"];
        var chosen = SmallMill.Read(Text, ImportKind.Movements, new ImportOptions { Zone = paris }).Value;
        var declared = SmallMill.Read("# zone: Europe/Paris\n" + Text, ImportKind.Movements).Value;
        Assert.Equal(chosen.Drafts, declared.Drafts);
        Assert.Contains("Europe/Paris", Assert.Single(SmallMill.Read("# zone: Mars/Base\n" + Text, ImportKind.Movements).Faults, f => f.Line == 1).Expected, StringComparison.Ordinal);
    }
}
