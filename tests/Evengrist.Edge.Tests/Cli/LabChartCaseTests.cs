using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Control charts through the command line.</summary>
public sealed class LabChartCaseTests
{
    // NIST/SEMATECH e-Handbook 6.3.2.2, from memory: mean 50.81, limits 45.8176 and 55.8024.
    private const string Handbook = """{ "values": [ 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1 ], "movingMean": {}, "sums": {}, "lower": 40, "upper": 60 }""";

    [Fact]
    public void Chart_OfTheHandbook_IsAnsweredInJsonAndInWords()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", Handbook);
        var answer = JsonDocument.Parse(Shell.Run("lab", "chart", "--in", file, "--json").Output).RootElement;
        Assert.Equal((45.8176, 55.8024), (Math.Round(answer.GetProperty("limits").GetProperty("lower").GetDouble(), 4), Math.Round(answer.GetProperty("limits").GetProperty("upper").GetDouble(), 4)));
        Assert.Equal(465.444, answer.GetProperty("runLengths")[2].GetProperty("nothingMoved").GetDouble(), 1e-3); // R, package spc.
        var (status, output, _) = Shell.Run("lab", "chart", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("limits from the first 10: 45.8176 – 50.8100 – 55.8024", output, StringComparison.Ordinal);
        Assert.Contains("capability within: Cp", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "values": [ 1 ] }""", "2 to 10000 are charted")]
    [InlineData("""{ "values": [ 1, 2 ], "groups": [ [ 1, 2 ], [ 2, 3 ] ] }""", "not both")]
    [InlineData("""{ "groups": [ [ 1, 2 ], null ] }""", "$.groups")]
    [InlineData("""{ "values": [ 1, 2 ], "rules": [ "Seven" ] }""", "rules")]
    [InlineData("""{ "values": [ 1, "two" ] }""", "values[1] (line 1, column 23)")]
    [InlineData("""{ "values": [ 1, 2, 3 ], "period": 9 }""", "2 to 3 of the first")]
    [InlineData("""{ "values": [ 1, 2, 3 ], "movingMean": { "weight": 2 } }""", "weight above 0")]
    public void Case_ThatCannotBe_NamesTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "chart", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Chart_OfEqualValues_SaysWhyThereIsNone()
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "chart", "--in", folder.File("case.json", """{ "values": [ 5, 5, 5 ] }"""));
        Assert.NotEqual(Exit.Done, status);
        Assert.Contains("do not differ at all", error, StringComparison.Ordinal);
    }
}
