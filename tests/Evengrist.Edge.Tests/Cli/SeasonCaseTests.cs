using System.Text.Json;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Posed crop years through the command line.</summary>
public sealed class SeasonCaseTests
{
    [Fact]
    public void Plan_SampleCase_StarvesOnTheDayOfArithmetic()
    {
        // 13,900 t at 14.628 % with a base of 13.9 %: 13,900/(90·0.687) run days from 15 September 2025, 4 June 2026 within a day (docs/model/season.md) [derived].
        var answer = Json("plan", "season-plan.json");
        Assert.Equal("Optimal", answer.GetProperty("exit").GetString());
        Assert.False(answer.GetProperty("isOnSpec").GetBoolean());
        var cover = answer.GetProperty("covers")[0];
        Assert.Contains(cover.GetProperty("starveDate").GetString(), new[] { "2026-06-03", "2026-06-04", "2026-06-05" });
        Assert.Equal("Protein", cover.GetProperty("limiting").GetString());
        Assert.True(answer.GetProperty("misses").GetArrayLength() > 0);
    }

    [Fact]
    public void Value_SampleCase_PutsTheDroughtTruckIntoItsCleanBin()
    {
        var bins = Json("value", "season-value.json").GetProperty("bins");
        Assert.Equal("B05", bins[0].GetProperty("bin").GetString());
        Assert.True(bins[0].GetProperty("perTonne").GetDouble() > bins[1].GetProperty("perTonne").GetDouble());
        Assert.Contains("it holds HS", bins[2].GetProperty("whyNot").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"least\": 14.4", "\"least\": 14.4, \"most\": 14", 2, "lies above its most")]
    [InlineData("\"what\": \"Protein\"", "\"what\": \"Colour\"", 2, "$.season.flours[0].limits[0].what")]
    [InlineData("\"openingTonnes\": 13900", "\"openingTonnes\": -1", 2, "wheat HS, opening")]
    [InlineData("\"currency\": \"USD\"", "\"currency\": \"USD\", \"carryOut\": [ { \"wheatClass\": \"HS\", \"leastTonnes\": 20000 } ]", 3, "at least 20000 t of HS left at the end: short by 6100")]
    public void Plan_WhatCannotBe_SaysWhatToDo(string was, string becomes, int status, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "season-plan.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var ran = Shell.Run("season", "plan", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)));
        Assert.Equal(status, ran.Status);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    private static JsonElement Json(string verb, string sample)
    {
        var (status, output, error) = Shell.Run("season", verb, "--in", Repository.Sample("cases", sample), "--json");
        Assert.True(status == 0, error);
        return JsonDocument.Parse(output).RootElement;
    }
}
