using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Conformity through the command line.</summary>
public sealed class LabConformCaseTests
{
    // Lots N(12.3, 0.25), u 0.15, at least 12.0, reading 12.10: computed in R 4.2.2; formulas of JCGM 106:2012 from memory.
    private const string Lots = """{ "results": [ 12.10 ], "uncertainty": { "oneResult": 0.15 }, "lower": 12, "lots": { "mean": 12.3, "deviation": 0.25 }, "customer": { "uncertainty": 0.2 } }""";

    [Fact]
    public void Conform_WithTheMillsLots_IsAnsweredInJsonAndInWords()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", Lots);
        var answer = JsonDocument.Parse(Shell.Run("lab", "conform", "--in", file, "--json").Output).RootElement;
        Assert.Equal(0.8827914, answer.GetProperty("chance").GetDouble(), 1e-7);
        Assert.Equal(0.0295194, answer.GetProperty("lots").GetProperty("acceptedOutside").GetDouble(), 1e-7);
        var (status, output, _) = Shell.Run("lab", "conform", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("inside with a chance of 0.8828 (0.7475 by the results alone)", output, StringComparison.Ordinal);
        Assert.Contains("A named person decides.", output, StringComparison.Ordinal);
    }

    // LotRiskTests: accepted from 12.24675 on, 0.0018536 are outside and accepted, 0.3143218 inside and turned away (computed in R 4.2.2); asked backwards.
    [Fact]
    public void Conform_WithARiskWantedOverAllLots_GivesTheGuardBandThatKeepsIt()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", Lots.Replace("\"lower\"", "\"wanted\": { \"acceptedOutside\": 0.0018536, \"rejectedInside\": 0.3143218 }, \"lower\"", StringComparison.Ordinal));
        var bands = JsonDocument.Parse(Shell.Run("lab", "conform", "--in", file, "--json").Output).RootElement.GetProperty("guards");
        Assert.Equal(["AcceptedOutside", "RejectedInside"], bands.EnumerateArray().Select(b => b.GetProperty("keeps").GetString()));
        Assert.All(bands.EnumerateArray(), b =>
        {
            Assert.Equal(0.24675, b.GetProperty("guard").GetDouble(), 2e-5);
            Assert.Equal(12.24675, b.GetProperty("acceptFrom").GetDouble(), 2e-5);
            Assert.Equal(0.3143218, b.GetProperty("lots").GetProperty("rejectedInside").GetDouble(), 3e-5);
        });
        Assert.Contains("guard band for outside and accepted at most 0.185 %: 0.2467, accepted from 12.2467", Shell.Run("lab", "conform", "--in", file).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "wanted": { "acceptedOutside": 0.01 } }""", "$.wanted")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "lots": { "mean": 2, "deviation": 1 }, "wanted": { "rejectedInside": 0 } }""", "above 0 and at most 0.5")]
    [InlineData("""{ "results": [], "uncertainty": { "oneResult": 0.1 }, "lower": 1 }""", "1 to 1000 are judged")]
    [InlineData("""{ "uncertainty": { "oneResult": 0.1 }, "lower": 1 }""", "results")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": -0.1 }, "lower": 1 }""", "at least 0")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 } }""", "lower limit, an upper limit, or both")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "upper": 1 }""", "lies below the upper")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "decision": "GuardedForSafety" }""", "$.decision")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "guard": 0.1 }""", "$.guard")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1, "bias": 0.2 }, "lower": 2 }""", "bias part")]
    [InlineData("""{ "results": [ 1 ], "uncertainty": { "oneResult": 0.1 }, "lower": 2, "policy": 2 }""", "above 0.5 and below 1")]
    public void Case_ThatCannotBe_NamesTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "conform", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Conform_OfAMeanOnOneInstrument_SaysThatBiasDoesNotAverageAway()
    {
        using var folder = new Folder();
        var (_, output, _) = Shell.Run("lab", "conform", "--in", folder.File("case.json", """{ "results": [ 11.74, 11.74, 11.74, 11.74 ], "uncertainty": { "oneResult": 0.15 }, "lower": 11.7, "upper": 12.1 }"""));
        Assert.Contains("0.7031", output, StringComparison.Ordinal);
        Assert.Contains("does not average away", output, StringComparison.Ordinal);
    }
}
