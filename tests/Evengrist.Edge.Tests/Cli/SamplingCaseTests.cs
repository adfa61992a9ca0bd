using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Posed cases of sampling through the command line; what the models give is checked beside the models.</summary>
public sealed class SamplingCaseTests
{
    // Acceptance scenario of the design: 13.15 against 13.0 with a standard deviation of 0.25 is 72.6 % sure.
    [Fact]
    public void Edge_WorkedReading_SaysProbeAgain()
    {
        var answer = Json("edge", "edge.json");
        var nearest = answer.GetProperty("edges")[0];
        Assert.Equal((13.0, 0.726, 1), (nearest.GetProperty("edge").GetDouble(), Math.Round(nearest.GetProperty("chanceRightSide").GetDouble(), 3), nearest.GetProperty("moreProbes").GetInt32()));
        Assert.StartsWith("Probe again", answer.GetProperty("advice").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Edge_UnderAContract_NamesTheMoneyOnEitherSide()
    {
        using var folder = new Folder();
        var contract = JsonDocument.Parse(File.ReadAllText(Repository.Sample("cases", "settle.json"))).RootElement.GetProperty("contract").GetRawText();
        var (status, output, _) = Shell.Run("intake", "edge", "--in", folder.File("e.json", $$"""{ "finding": { "protein [% 12mb]": 12.7 }, "sd": 0.25, "contract": {{contract}} }"""), "--json");
        var nearest = JsonDocument.Parse(output).RootElement.GetProperty("edges")[0];
        Assert.Equal((Exit.Done, 12.75, "0.44 USD/bu", "0.64 USD/bu"), (status, nearest.GetProperty("edge").GetDouble(), nearest.GetProperty("below").GetString(), nearest.GetProperty("above").GetString()));
    }

    [Fact]
    public void Probe_Posed_GivesPointsMassesAndTheMark()
    {
        var answer = Json("probe", "probe.json");
        Assert.Equal((6, 6, 2000), (answer.GetProperty("increments").GetInt32(), answer.GetProperty("points").GetArrayLength(), answer.GetProperty("compositeG").GetInt32()));
        Assert.Contains("low confidence", answer.GetProperty("mark").GetString(), StringComparison.Ordinal);
        Assert.Equal(Math.Sqrt(0.16 / 6 + 0.01 + 0.0225), answer.GetProperty("spread").GetProperty("standardDeviation").GetDouble(), 9);
        Assert.Equal(7, answer.GetProperty("spread").GetProperty("probesWanted").GetInt32()); // (1.96 · 0.4/0.3)² = 6.83 (derived)
    }

    [Fact]
    public void Test_Posed_WeighsTheWait()
    {
        var falling = Json("test", "test-falling-number.json");
        Assert.True(falling.GetProperty("testNow").GetBoolean());
        Assert.Equal(8 * 1.33 * 2, falling.GetProperty("queueCost").GetDouble(), 9);
        var don = Json("test", "test-don.json").GetProperty("acceptance");
        Assert.Equal(0.233, don.GetProperty("buyersRiskAtLimit").GetDouble(), 3); // derived, as on the page
        Assert.Contains("from memory", don.GetProperty("mark").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Screen_FiveEqualLoads_DoesNotClearAboveTheProofLimit()
    {
        var answer = Json("screen", "screen.json");
        Assert.Equal(("does not clear all", 0.2m, 5), (answer.GetProperty("verdict").GetString(), answer.GetProperty("proofLimit").GetDecimal(), answer.GetProperty("testNext").GetArrayLength()));
    }

    [Theory]
    [InlineData("probe")]
    [InlineData("edge")]
    [InlineData("test")]
    [InlineData("screen")]
    public void Help_EachVerb_PrintsAnExampleThatWorksInWordsAndJson(string verb)
    {
        var (_, output, _) = Shell.Run("intake", verb, "--help");
        using var folder = new Folder();
        var file = folder.File("case.json", output[(output.IndexOf("For example:", StringComparison.Ordinal) + "For example:".Length)..]);
        Assert.Equal(Exit.Done, Shell.Run("intake", verb, "--in", file, "--json").Status);
        Assert.NotEmpty(Shell.Run("intake", verb, "--in", file).Output);
    }

    [Theory]
    [InlineData("edge", """{ "reads": 13.1, "sd": 0, "edges": [ 13 ] }""", "$.sd: read \"0\"")]
    [InlineData("edge", """{ "reads": 13.1, "sd": 1, "edges": [ 13 ], "contract": {} }""", "either reads and edges, or finding and contract")]
    [InlineData("edge", """{ "reads": 13.1, "sd": 1, "edgs": [ 13 ] }""", "the nearest is edges")]
    [InlineData("probe", """{ "rule": "mine", "vehicle": "boat", "load": { "t": 1 }, "depthM": 1 }""", "$.vehicle: read \"boat\"; expected flatBottom or hopperBottom")]
    [InlineData("probe", """{ "rule": "us-hopper-bottom", "vehicle": "flatBottom", "load": { "t": 1 }, "depthM": 1 }""", "is not for this vehicle")]
    [InlineData("test", """{ "test": "don", "limit": 1, "load": { "t": 26 } }""", "one of prior and history")]
    [InlineData("test", """{ "test": "smell", "limit": 1, "load": { "t": 26 }, "prior": { "mean": 1, "sd": 1 } }""", "$.test: read \"smell\"; expected fallingNumber or don")]
    [InlineData("test", """{ "test": "fallingNumber", "limit": 40, "load": { "t": 26 }, "prior": { "mean": 25, "sd": 1 }, "claim": 900, "minutes": 8, "costPerMinute": 1 }""", "above 50 s")]
    [InlineData("screen", """{ "limit": 1, "trucks": [ { "code": "a", "t": 1 } ] }""", "2 to 100 loads")]
    [InlineData("screen", """{ "limit": 1, "trucks": [ { "code": "a", "t": 1, "kg": 1 }, { "code": "b", "t": -1 } ] }""", "$.trucks[0]: read \"an object\"; expected a mass: one of t and kg")]
    public void Run_BadCase_SaysWhatAndWhere(string verb, string text, string said)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("intake", verb, "--in", folder.File("case.json", text), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("probe", """{ "rule": "static-by-mass", "vehicle": "flatBottom", "load": { "t": 80 }, "depthM": 2 }""", "ends at 50 t")]
    [InlineData("test", """{ "test": "don", "limit": 1, "load": { "t": 26 }, "history": [ { "value": 0.2 } ], "claim": 900, "minutes": 8, "costPerMinute": 1 }""", "5 are needed")]
    public void Run_SoundCaseWithoutAnAnswer_SaysWhy(string verb, string text, string said)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("intake", verb, "--in", folder.File("case.json", text));
        Assert.Equal(Exit.NoAnswer, status);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    private static JsonElement Json(string verb, string sample)
    {
        var (status, output, error) = Shell.Run("intake", verb, "--in", Repository.Sample("cases", sample), "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
