using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Meter or wheat, and validation, through the command line.</summary>
public sealed class LabWatchCaseTests
{
    // Twelve pairs of the fictional mill, posed.
    private static readonly double[] Reference = [11.86, 11.91, 11.78, 11.95, 11.88, 11.83, 11.90, 11.97, 11.81, 11.85, 11.92, 11.89];
    private static readonly double[] Read = [11.90, 11.84, 11.86, 11.93, 12.12, 12.15, 12.14, 12.27, 12.09, 12.10, 12.25, 12.16];

    [Fact]
    public void Watch_OfTheMillsPairs_NamesTheInstrument_AndBeforeThatAsksForMore()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", Case(12));
        var answer = JsonDocument.Parse(Shell.Run("lab", "watch", "--in", file, "--json").Output).RootElement;
        Assert.Equal(("the instrument", 4, 8, 6), (answer.GetProperty("verdict").GetString(), answer.GetProperty("startedAfter").GetInt32(), answer.GetProperty("since").GetInt32(), answer.GetProperty("sumAlarm").GetInt32()));
        var (status, output, _) = Shell.Run("lab", "watch", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("verdict: the instrument, started between pairs 4 and 5 (stands since pair 8)", output, StringComparison.Ordinal);
        Assert.Contains("the mean difference goes from +0.008 to +0.279, the mean reference from 11.875 to 11.881", output, StringComparison.Ordinal);
        Assert.Contains("rings at pair 6, with 0.46", output, StringComparison.Ordinal);
        Assert.StartsWith("not sure yet, take ", Shell.Run("lab", "watch", "--in", folder.File("few.json", Case(2))).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "pairs": [ null ], "quiet": 4 }""", "$.pairs")]
    [InlineData("""{ "pairs": [ { "reference": 1, "instrument": 1 }, { "reference": 1, "instrument": 1 } ] }""", "has to be known")]
    [InlineData("""{ "pairs": [ { "reference": 1, "instrument": 1 }, { "reference": 1, "instrument": 1 } ], "referenceDeviation": -1, "pairDeviation": 1 }""", "above 0; got -1")]
    [InlineData("""{ "pairs": [ { "reference": 1, "instrument": "x" } ] }""", "pairs[0].instrument")]
    public void Case_ThatCannotBe_NamesTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "watch", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Validate_SaysWhatToSet()
    {
        using var folder = new Folder();
        var high = Read[4..].Concat(Reference[4..].Select(r => r + 1.28)).ToArray();
        var (status, output, _) = Shell.Run("lab", "validate", "--in", folder.File("case.json", JsonSerializer.Serialize(new { reference = Reference[4..].Concat(Reference[4..].Select(r => r + 1)), instrument = high })));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("set the bias alone: add −0.27", output, StringComparison.Ordinal);
        Assert.Contains("A named person decides.", output, StringComparison.Ordinal);
    }

    private static string Case(int pairs) => JsonSerializer.Serialize(new { referenceDeviation = 0.05, pairDeviation = 0.12, allowance = 0.05, limit = 0.4, pairs = Reference.Zip(Read, (r, i) => new { reference = r, instrument = i }).Take(pairs) });
}
