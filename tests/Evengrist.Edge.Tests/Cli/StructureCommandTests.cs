using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Recall sizes through the command line, posed and from the records.</summary>
public sealed class StructureCommandTests
{
    [Fact]
    public void Posed_Sample_EachStepMakesRecallsSmallerAndSaysItsCost()
    {
        var (status, output, error) = Shell.Run("tracing", "structure", "--in", Repository.Sample("cases", "lot-structure.json"), "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var ways = JsonDocument.Parse(output).RootElement.GetProperty("ways").EnumerateArray().ToArray();
        var expected = ways.Select(w => w.GetProperty("expectedTonnes").GetDouble()).ToArray();
        Assert.True(expected[2] < expected[1] && expected[3] < expected[1], string.Join(" ", expected));
        Assert.Equal([0, 0, 0], ways[..3].Select(w => w.GetProperty("cleanOuts").GetInt32()));

        // By hand: lots of 130 t from two bins draw 65 t of each, 2.5 trucks of 26 t; without a heel a truck lies in one lot or in two of 97.5 t.
        Assert.Equal(195, ways[2].GetProperty("worstTonnes").GetDouble(), 6);
        Assert.InRange(expected[2], 97.5, 195);
        Assert.True(ways[3].GetProperty("cleanOuts").GetInt32() is > 0 and var times && ways[3].GetProperty("setAsideTonnes").GetDouble() == times * 15.0);
    }

    [Theory]
    [InlineData("""{ "trucks": { "count": 4, "tonnes": 26 }, "ways": [] }""", "at least one way")]
    [InlineData("""{ "trucks": { "count": 0, "tonnes": 26 }, "ways": [ { "name": "x" } ] }""", "$.trucks.count")]
    [InlineData("""{ "trucks": [ 26, -1 ], "ways": [ { "name": "x" } ] }""", "$.trucks[1]")]
    [InlineData("""{ "trucks": [ 26 ], "ways": [ { "name": "x", "emptying": "core" } ] }""", "$.ways[0].emptying")]
    [InlineData("""{ "trucks": [ 26 ], "ways": [ { "name": "x", "heelTonnes": 80, "lotTonnes": 100 } ] }""", "larger than its heel")]
    [InlineData("""{ "trucks": [ 26 ], "ways": [ { "nmae": "x" } ] }""", "nmae")]
    public void Posed_Wrongly_SaysWhereAndWhat(string json, string words)
    {
        using var folder = new Folder();
        var (status, _, error) = Shell.Run("tracing", "structure", "--in", folder.File("case.json", json));
        Assert.Equal(Exit.BadInput, status);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Records_OfTheSmallMill_AreTracedWhole()
    {
        using var folder = EpcisCommandTests.Mill();
        var (status, output, error) = Shell.Run("tracing", "structure", "--data", folder.Path, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal(answer.GetProperty("trucksInSpan").GetInt32(), answer.GetProperty("traced").GetInt32());
        Assert.True(answer.GetProperty("sizes")[3].GetProperty("worstTonnes").GetDouble() > 0);
        Assert.Equal(Exit.NoAnswer, Shell.Run("tracing", "structure", "--from", "2020-01-01T00:00Z", "--until", "2020-02-01T00:00Z", "--data", folder.Path).Status);
        Assert.Equal(Exit.BadInput, Shell.Run("tracing", "structure", "--from", "2020-02-01T00:00Z", "--until", "2020-01-01T00:00Z", "--data", folder.Path).Status);
    }
}
