using System.Text.Json;
using Evengrist.Cli;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Acceptance sampling through the command line.</summary>
public sealed class LabPlanTests
{
    [Fact]
    public void Questions_AreAnsweredInJsonAndInWords()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", """
            { "attributes": { "size": 52, "accept": 3, "lot": 10000, "shares": [ 0.05 ] }, "design": { "goodShare": 0.01, "sellersRisk": 0.05, "badShare": 0.06, "buyersRisk": 0.10 },
              "table": { "lot": 1000, "limitPercent": 1.0, "lots": [ "Rejected", "Rejected" ] }, "variables": { "letter": "I", "limitPercent": 1.0, "tightened": true },
              "threeClass": { "size": 5, "marginal": 2, "marginalShare": 0.2, "badShare": 0 }, "find": { "share": 0.05, "grams": 375, "perGram": 0.01, "colonies": 30 } }
            """);
        var answer = JsonDocument.Parse(Shell.Run("lab", "plan", "--in", file, "--json").Output).RootElement;
        Assert.Equal(.7383, answer.GetProperty("curve")[0].GetProperty("accepted").GetDouble(), 1e-4); // e-Handbook 6.2.3.2, from memory.
        Assert.Equal(110, answer.GetProperty("designs").GetProperty("attributes").GetProperty("size").GetInt32());
        var (status, output, _) = Shell.Run("lab", "plan", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("letter J, Tightened: look at 80, accept with up to 1 bad, reject from 2", output, StringComparison.Ordinal);
        Assert.Contains("measure 25", output, StringComparison.Ordinal);
        Assert.Contains("accepted with 94.21 %", output, StringComparison.Ordinal);
        Assert.Contains("59 units", output, StringComparison.Ordinal);
        Assert.Contains("the portions hold a cell with 97.65 %", output, StringComparison.Ordinal);
        Assert.Contains("from 20.24 to 42.83", output, StringComparison.Ordinal);
        Assert.Contains("A negative test does not make a lot free", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ }", "Nothing is asked")]
    [InlineData("""{ "attributes": { "size": 5, "accept": 5 } }""", "fewer than are looked at")]
    [InlineData("""{ "attributes": { "size": 5, "accept": 0, "lot": 4 } }""", "$.attributes.lot")]
    [InlineData("""{ "attributes": { "size": 5, "accept": 0, "shares": [ 5 ] } }""", "write 1 % as 0.01")]
    [InlineData("""{ "design": { "goodShare": 0.06, "sellersRisk": 0.05, "badShare": 0.01, "buyersRisk": 0.10 } }""", "$.design")]
    [InlineData("""{ "table": { "lot": 1, "limitPercent": 1.0 } }""", "2 units or more")]
    [InlineData("""{ "table": { "lot": 100, "limitPercent": 1.1, "level": "IV" } }""", "one of S-1")]
    [InlineData("""{ "variables": { "limitPercent": 1.0 } }""", "Give the lot, or the letter")]
    [InlineData("""{ "variables": { "limitPercent": 1.0, "lot": 2 } }""", "3 units or more")]
    [InlineData("""{ "threeClass": { "size": 5, "marginal": 2, "marginalShare": 0.8, "badShare": 0.4 } }""", "together at most 1")]
    [InlineData("""{ "find": { "chance": 0.9 } }""", "Give a share")]
    [InlineData("""{ "find": { "perGram": 1 } }""", "cells ask for grams")]
    public void Questions_ThatCannotBe_NameTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "plan", "--in", folder.File("case.json", text));
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Plans_ThatAreNotHere_SaySo()
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "plan", "--in", folder.File("case.json", """{ "variables": { "letter": "A", "limitPercent": 1.0 } }"""));
        Assert.Equal(Exit.NoAnswer, status);
        Assert.Contains("letters B to Q", error, StringComparison.Ordinal);
        // Five rejected on tightened: sampling stops.
        var stopped = Shell.Run("lab", "plan", "--in", folder.File("two.json", $$"""{ "table": { "lot": 1000, "limitPercent": 1.0, "lots": [ {{string.Join(", ", Enumerable.Repeat("\"Rejected\"", 7))}} ] } }"""));
        Assert.Contains("until the cause is mended", stopped.Output, StringComparison.Ordinal);
    }
}
