using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Many mills through the command line.</summary>
public sealed class LabMillsCaseTests
{
    // Limits 11.7 to 12.1: 11.95/0.09 has Cpk 0.56 and 5.1 % out, 11.78/0.07 has 0.38 and 12.7 %, by the normal distribution.
    private const string Three = """
        { "lower": 11.7, "upper": 12.1, "reference": "brand", "mills": [ { "mill": "M03", "laboratory": "L3", "mean": 11.95, "deviation": 0.09, "count": 60 }, { "mill": "M07", "laboratory": "L7", "mean": 11.78, "deviation": 0.07, "count": 60 },
          { "mill": "M01", "laboratory": "L1", "mean": 11.9, "deviation": 0.05, "count": 60 } ],
          "ring": [ { "laboratory": "brand", "sample": "a", "value": 11.9 }, { "laboratory": "L7", "sample": "a", "value": 11.78 }, { "laboratory": "brand", "sample": "b", "value": 12.0 }, { "laboratory": "L7", "sample": "b", "value": 11.89 },
            { "laboratory": "brand", "sample": "c", "value": 12.1 }, { "laboratory": "L7", "sample": "c", "value": 11.99 }, { "laboratory": "brand", "sample": "d", "value": 12.1 }, { "laboratory": "L7", "sample": "d", "value": 11.98 } ] }
        """;

    [Fact]
    public void Mills_SortTheWorstFirst_AndNameTheLaboratory()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", Three);
        var mills = JsonDocument.Parse(Shell.Run("lab", "mills", "--in", file, "--json").Output).RootElement.GetProperty("mills");
        Assert.Equal(["M07", "M03", "M01"], mills.EnumerateArray().Select(m => m.GetProperty("mill").GetString()));
        Assert.Equal(12.7, mills[0].GetProperty("percentOut").GetDouble(), 0.1);
        Assert.Equal(-0.115, mills[0].GetProperty("laboratoryBias").GetDouble(), 1e-9);
        var (status, output, _) = Shell.Run("lab", "mills", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("low against brand: look at the laboratory before the flour", output, StringComparison.Ordinal);
        Assert.Contains("no ring test: flour and laboratory cannot be told apart", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "mills": [], "lower": 1 }""", "1 to 500 are ranked")]
    [InlineData("""{ "mills": [ null ], "lower": 1 }""", "$.mills")]
    [InlineData("""{ "mills": [ { "mill": "M", "laboratory": "L", "mean": 1, "deviation": -1, "count": 9 } ], "lower": 1 }""", "standard deviation above 0")]
    [InlineData("""{ "mills": [ { "mill": "M", "laboratory": "L", "mean": 1, "deviation": 1, "count": 9 } ] }""", "lower limit, an upper limit, or both")]
    public void Case_ThatCannotBe_NamesTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "mills", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
