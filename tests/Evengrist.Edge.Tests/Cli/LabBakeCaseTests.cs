using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>A posed bake through the command line.</summary>
public sealed class LabBakeCaseTests
{
    [Fact] // The example of the help: pairs and triangle computed with R 4.2.2; the weights by dry matter, 100·86/86.8.
    public void Bake_Example_IsAnsweredInJsonAndInWords()
    {
        using var folder = new Folder();
        var file = folder.File("case.json", LabBakeCase.Help.Example);
        var answer = JsonDocument.Parse(Shell.Run("lab", "bake", "--in", file, "--json").Output).RootElement;
        Assert.Equal(3.926287, answer.GetProperty("pairs").GetProperty("t").GetDouble(), 1e-6);
        Assert.Equal(0.0434823, answer.GetProperty("tasting").GetProperty("p").GetDouble(), 1e-7);
        Assert.Equal(99.0783, answer.GetProperty("weigh").GetProperty("flourGrams").GetDouble(), 1e-4);
        var (status, output, _) = Shell.Run("lab", "bake", "--in", file);
        Assert.Equal(Exit.Done, status);
        Assert.Contains("trial less control: 7.000 (2.784 to 11.216, 95 %), p 0.0057, by signed ranks 0.0207", output, StringComparison.Ordinal);
        Assert.Contains("at 5 % 15 are needed", output, StringComparison.Ordinal);
    }

    [Fact] // LS-56, ours; a blend of two parts is a guess and says so.
    public void Bake_RanksAndABlend_AreAnswered()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("lab", "bake", "--in", folder.File("case.json", """{ "ranks": [ [1,2,3],[1,3,2],[2,1,3],[1,2,3],[1,2,3],[2,1,3],[1,3,2],[1,2,3] ], "blend": { "parts": [ { "share": 0.25, "value": 60 }, { "share": 0.75, "value": 56 } ] } }"""));
        Assert.Equal(Exit.Done, status);
        Assert.Contains("Q 9.000, p 0.0111", output, StringComparison.Ordinal);
        Assert.Contains("blend: 57.000. A linear guess alone, no fact", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{}", "Ask something")]
    [InlineData("""{ "pairs": { "control": [ 1 ], "trial": [ 1, 2 ] } }""", "a control for each trial")]
    [InlineData("""{ "tasting": { "kind": "Triangle", "tests": 5, "right": 6 } }""", "from none to all")]
    [InlineData("""{ "ranks": [ [ 1, 1 ], [ 1, 2 ] ] }""", "Row 1 is no ranking")]
    [InlineData("""{ "blend": { "parts": [ { "share": 0.5, "value": 1 } ] } }""", "sum to 1")]
    [InlineData("""{ "weigh": { "flourGrams14": -1, "moisture": 40, "water": 62 } }""", "Moisture of the flour lies from 5 to 20")]
    [InlineData("""{ "bread": 1 }""", "bread")]
    public void Case_ThatCannotBe_NamesTheFault(string text, string says)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("lab", "bake", "--in", folder.File("case.json", text), "--json");
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(says, error, StringComparison.Ordinal);
    }
}
