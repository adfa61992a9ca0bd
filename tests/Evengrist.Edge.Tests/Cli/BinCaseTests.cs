using System.Text.Json;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Posed bins through the command line: soundings and weigh-outs.</summary>
public sealed class BinCaseTests
{
    [Fact]
    public void Sound_SampleCase_IsTheWorkedCaseOfThePage()
    {
        // docs/model/bin-shape.md [derived].
        var answer = Json("sound", "sound-level.json");
        Assert.Equal(1295.907, answer.GetProperty("volumeM3").GetDouble(), 0.001);
        Assert.Equal(1063.895, answer.GetProperty("tonnes").GetDouble(), 0.001);
        Assert.Equal(13.843, answer.GetProperty("standardUncertaintyTonnes").GetDouble(), 0.001);
        Assert.Contains("1.292", answer.GetProperty("densityFrom").GetString(), StringComparison.Ordinal);
        Assert.True(answer.GetProperty("againstTheLedger").GetProperty("isWithin").GetBoolean());
    }

    [Fact]
    public void Sound_TonnesOfTheSounding_GiveTheLevelBack()
    {
        using var folder = new Folder();
        const string Case = """{ "shape": { "diameterMetres": 10, "wallMetres": 20 }, "holds": { "t": 1063.8950428 }, "surface": "level", "density": { "kgPerM3": 789.39 }, "packFactor": { "value": 1.04, "uncertainty": 0.01 } }""";
        var (status, output, _) = Shell.Run("bins", "sound", "--in", folder.File("case.json", Case), "--json");
        Assert.Equal(0, status);
        Assert.Equal(3.5, JsonDocument.Parse(output).RootElement.GetProperty("ullageAtWallM").GetDouble(), 1e-6);
    }

    [Fact]
    public void Sound_WithoutAPackFactor_SaysThatItIsNotCalibrated()
    {
        using var folder = new Folder();
        var (status, output, _) = Shell.Run("bins", "sound", "--in", folder.File("case.json", File.ReadAllText(Repository.Sample("cases", "sound-level.json")).Replace("\"packFactor\": { \"value\": 1.04, \"uncertainty\": 0.01 },", "", StringComparison.Ordinal)));
        Assert.Equal(0, status);
        Assert.Contains("not calibrated", output, StringComparison.Ordinal);
        Assert.Contains("from memory", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Calibrate_SampleCase_IsTheWorkedCaseOfThePage()
    {
        var answer = Json("calibrate", "weigh-out.json");
        Assert.Equal(1.0399, answer.GetProperty("packFactor").GetDouble(), 1e-4);
        Assert.Equal(0.0197, answer.GetProperty("standardUncertainty").GetDouble(), 1e-4);
    }

    [Theory]
    [InlineData("\"ullage\": 3.5", "\"ullage\": 25", 3, "the wall is bare")]
    [InlineData("\"surface\": \"level\"", "\"surface\": \"sloping\"", 2, "$.sounding.surface")]
    [InlineData("\"wallMetres\": 20", "\"wallMetres\": 20, \"hopperDegrees\": 45", 2, "both a slope and an outlet")]
    [InlineData("\"unit\": \"lb/bu\"", "\"unit\": \"kg\"", 2, "$.testWeight")]
    [InlineData("\"value\": 60.0", "\"value\": 600.0", 2, "Is the unit right")]
    [InlineData("\"wallMetres\": 20", "\"wallMetres\": \"twenty\"", 2, "wallMetres (line 1): write a number, without quotes")]
    public void Sound_WhatCannotBe_SaysWhatToDo(string was, string becomes, int status, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "sound-level.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var (exit, output, error) = Shell.Run("bins", "sound", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((status, ""), (exit, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
        Assert.DoesNotMatch("System\\.|Parameter|Actual value", error);
    }

    [Fact]
    public void Sound_MoreThanGoesIn_SaysWhatTheBinHolds()
    {
        using var folder = new Folder();
        const string Case = """{ "shape": { "diameterMetres": 10, "wallMetres": 20 }, "holds": { "t": 2000 }, "surface": "level", "density": { "kgPerM3": 780 } }""";
        var (status, _, error) = Shell.Run("bins", "sound", "--in", folder.File("case.json", Case));
        Assert.Equal(3, status);
        Assert.Contains("1570.8 m³", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Best_SampleCase_RanksTheBandFirstAndSaysWhyNot()
    {
        // docs/model/best-bin.md [derived].
        var answer = Json("best", "best-bin.json");
        var ranked = answer.GetProperty("ranked").EnumerateArray().ToArray();
        Assert.Equal(["B05", "B17", "B07", "B02"], ranked.Select(r => r.GetProperty("bin").GetString()));
        Assert.Equal(93.70, ranked[0].GetProperty("chanceOfBandPercent").GetDouble(), 0.01);
        Assert.Equal(-11.00, ranked[3].GetProperty("moneyPerTonneOfLoad").GetDouble(), 0.01);
        Assert.Equal(["B08", "B14", "B18", "B19"], answer.GetProperty("notPossible").EnumerateArray().Select(n => n.GetProperty("bin").GetString()));
    }

    [Theory]
    [InlineData("\"t\": 26", "\"t\": -26", 2, "$.load.t")]
    [InlineData("\"proteinTo\": 12.3", "\"proteinTo\": 10", 2, "lower to a higher")]
    [InlineData("\"class\": \"HW\", \"t\": 26", "\"class\": \"DUR\", \"t\": 26", 3, "it is for SW, the load is DUR")]
    [InlineData("\"code\": \"B05\"", "\"code\": \"B02\"", 2, "each bin once")]
    public void Best_WhatCannotBe_SaysWhatToDo(string was, string becomes, int status, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "best-bin.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var (exit, output, error) = Shell.Run("bins", "best", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)), "--json");
        Assert.Equal((status, ""), (exit, output));
        Assert.Contains(says, error, StringComparison.Ordinal);
    }

    private static JsonElement Json(string verb, string sample)
    {
        var (status, output, error) = Shell.Run("bins", verb, "--in", Repository.Sample("cases", sample), "--json");
        Assert.Equal((0, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
