using System.Text;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>A file of mill tests: the example as it is shown, and everything that cannot be read with its line.</summary>
public sealed class MillTestTableTests
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["America/Chicago"];

    private static Evengrist.Plant.Parsed<MillTestTable> Read(string text)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(text));
        return MillTestTable.Read(stream, "UA", 2, Zone);
    }

    [Fact]
    public void Example_IsReadAsItSays()
    {
        var tests = Read(MillTestColumns.Example).Value.Tests;
        Assert.Equal([2, 6], tests.Select(t => t.Line));
        var (first, second) = (tests[0].Paper, tests[1].Paper);
        Assert.Equal((Instant.FromUtc(2025, 9, 22, 14, 0), "Dr Anya Holt", 2, 17.5, "14mb", "first of the autumn"), (first.TakenAt, first.TakenBy, first.SheetVersion, first.Wheat.TonnesPerHour, $"{first.Wheat.Basis}", first.Remark));
        Assert.Equal([("B1", 29.5), ("B2", 44.1)], first.Releases.Select(r => (r.Key, r.Value)));
        Assert.Equal(("B1", 1000.0, 52.0), (first.Sieves[0].Passage, first.Sieves[0].ApertureMicrometres, first.Sieves[0].ThroughPercent));
        Assert.Equal(("1M", 14.2, 0.371, 11.0), (first.Streams[0].Product, first.Streams[0].YieldPercent, first.Streams[0].AshPercent, first.Streams[0].ProteinPercent));
        Assert.Equal((480, 31.2), (second.Set.GapMicrometres["B1"], second.Releases["B1"]));
    }

    [Theory]
    [InlineData("29.5;;;;first", "29,5x;;;;first", "line 2, column 9 (value): read \"29,5x\"; expected a number such as 29.5")]
    [InlineData("release;B2", "relese;B2", "line 3, column 7 (kind): read \"relese\"; expected release, sieve, stream, gap, air or cloth")]
    [InlineData("sieve;B1;52.0;1000", "sieve;B1;52.0;", "line 4, column 10 (opening): read nothing")]
    [InlineData("2025-09-29 09:00", "29.9.2025", "line 6, column 1 (taken)")]
    [InlineData("2025-09-29 09:00", "", "line 6, column 2 (by): read \"Femi Strand\"; expected \"Dr Anya Holt\" as in line 2, or nothing")]
    [InlineData("kind;at", "kind;where", "expected one of the headings taken, by")]
    [InlineData("flow [t/h]", "flow [kg/h]", "expected flow [t/h]")]
    [InlineData("taken;by", "taken;taken", "expected each heading once")]
    [InlineData("17.4;16.1", ";16.1", "line 6, column 3 (flow): read nothing")]
    [InlineData("release;B2", "release;B1", "line 3, column 8 (at): read \"B1\"; expected the release of B1 once")]
    public void Fault_IsNamedWithItsLine(string was, string becomes, string says)
        => Assert.Contains(Read(MillTestColumns.Example.Replace(was, becomes, StringComparison.Ordinal)).Faults, f => f.ToString().Contains(says, StringComparison.Ordinal));

    [Theory]
    [InlineData("", "the file is empty")]
    [InlineData("by;flow\nx;1", "headings are missing: taken")]
    [InlineData("taken;by;flow;moisture;wheat ash;wheat protein;kind;at;value", "rows below it")]
    [InlineData("taken;by;flow;moisture;wheat ash;wheat protein;kind;at;value\n;x;1;1;1;1;release;B1;3", "day and time of the first test")]
    public void File_WithoutTests_SaysWhatIsMissing(string text, string says) => Assert.Contains(Read(text).Faults, f => f.ToString().Contains(says, StringComparison.Ordinal));

    [Fact]
    public void Decimals_BehindACommaWhereTheFileSaysSo() =>
        Assert.Equal(29.5, Read("# decimal: comma\ntaken;by;flow;moisture;wheat ash;wheat protein;kind;at;value\n2025-09-22 09:00;x;17,5;16;1,5;12;release;B1;29,5").Value.Tests[0].Paper.Releases["B1"]);
}
