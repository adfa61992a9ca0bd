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

    [Fact]
    public void Promise_SampleCase_SaysThroughWhichDayAndHowSurely()
    {
        var (status, output, error) = Shell.Run("season", "promise", "--in", Repository.Sample("cases", "season-promise.json"), "--json", "--futures", "200", "--seed", "5");
        Assert.True(status == 0, error);
        Assert.Contains("200 of 200 futures", error, StringComparison.Ordinal); // progress is not among the answer
        var answer = JsonDocument.Parse(output).RootElement;
        Assert.Equal((200, 5), (answer.GetProperty("futures").GetInt32(), answer.GetProperty("seed").GetInt32()));
        var flour = Assert.Single(answer.GetProperty("flours").EnumerateArray());
        var points = flour.GetProperty("points").EnumerateArray().Select(p => p.GetProperty("probability").GetDouble()).ToArray();
        Assert.Equal(42, points.Length);
        Assert.Equal(points.OrderDescending(), points);
        Assert.InRange(points[^1], 0, 0.84); // the plan itself starves before the end
        Assert.Equal("Protein", flour.GetProperty("ends")[0].GetProperty("what").GetString());
        Assert.Contains("not against this mill's own history", answer.GetProperty("basis").GetString(), StringComparison.Ordinal);
        Assert.Equal(Timeless(output), Timeless(Shell.Run("season", "promise", "--in", Repository.Sample("cases", "season-promise.json"), "--json", "--futures", "200", "--seed", "5").Output));
    }

    [Theory]
    [InlineData("\"tonnesShare\": 0.2", "\"tonnesShare\": -0.2", "give a share of 0 or more")]
    [InlineData("\"stated\": 0.85", "\"stated\": 85", "give a probability between 0 and 1")]
    [InlineData("\"district\": \"High Brack\", \"tonnesShare\"", "\"district\": \"Elsewhere\", \"tonnesShare\"", "No delivery comes from it")]
    [InlineData("\"flour\": \"HG\", \"yearShare\"", "\"flour\": \"XX\", \"yearShare\"", "There is no such flour in the plan")]
    [InlineData("\"wheat\": \"H1\", \"truckTonnes\": 26", "\"wheat\": \"H1\", \"truckTonnes\": 0", "give t above 0")]
    [InlineData("\"futures\": 1000", "\"futures\": 1", "1 000 or more for a promise")]
    [InlineData("\"futures\": 1000", "\"futures\": 1000000", "at most 100000 futures")]
    [InlineData("\"instruments\": [{\"what\": \"Protein\"", "\"instruments\": [{\"what\": \"Ash\"", "No flour of the plan has a limit on this property")]
    [InlineData("\"seed\": 1", "\"sead\": 1", "sead")]
    public void Promise_WhatCannotBe_SaysWhatToDo(string was, string becomes, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "season-promise.json"));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var ran = Shell.Run("season", "promise", "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)));
        Assert.Equal(2, ran.Status);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    private static string Timeless(string json) => string.Join('\n', json.Split('\n').Where(line => !line.Contains("\"seconds\"", StringComparison.Ordinal)));

    private static JsonElement Json(string verb, string sample)
    {
        var (status, output, error) = Shell.Run("season", verb, "--in", Repository.Sample("cases", sample), "--json");
        Assert.True(status == 0, error);
        return JsonDocument.Parse(output).RootElement;
    }
}
