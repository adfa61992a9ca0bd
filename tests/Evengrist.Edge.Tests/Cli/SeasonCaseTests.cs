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

    [Fact]
    public void Value_OfALot_IsACurveThatFallsAndSaysHowMuchPays()
    {
        var lot = Json("value", "season-lot.json").GetProperty("lot");
        double[] means = [.. lot.GetProperty("curve").EnumerateArray().Select(p => p.GetProperty("perTonne").GetDouble())];
        Assert.Equal(9, means.Length);
        Assert.All(means.Zip(means.Skip(1)), p => Assert.True(p.Second <= p.First + 1e-6));
        Assert.Equal(means[^1], lot.GetProperty("mostPerTonne").GetDouble(), 9);

        // The year solved again with one hundredth of the lot agrees with the plan's own price to 1 %.
        var (first, again) = (lot.GetProperty("firstPerTonne").GetDouble(), lot.GetProperty("verifiedPerTonne").GetDouble());
        Assert.InRange(again, first - (0.01 * Math.Abs(first)), first + (0.01 * Math.Abs(first)));
        Assert.InRange(lot.GetProperty("atPrice").GetProperty("tonnes").GetDouble(), 0, 1500);
        Assert.Equal("HG", lot.GetProperty("uses")[0].GetProperty("flour").GetString());
    }

    [Fact]
    public void Bands_SampleCase_CostLessByNumberAndTakeTheirBins()
    {
        var rows = Json("bands", "season-bands.json").GetProperty("rows").EnumerateArray().ToArray();
        Assert.Equal([1, 2, 3], rows.Select(r => r.GetProperty("bands").GetInt32()));
        Assert.All(rows.Skip(1), r => Assert.True(r.GetProperty("savesAgainstOneLess").GetDouble() >= -1e-3));
        Assert.All(rows, r => Assert.Equal(6900, r.GetProperty("of").EnumerateArray().Sum(b => b.GetProperty("tonnes").GetDouble()), 4));
        string[] bins = [.. rows[2].GetProperty("of").EnumerateArray().SelectMany(b => b.GetProperty("bins").EnumerateArray()).Select(b => b.GetString()!)];
        Assert.Equal(bins.Length, bins.Distinct().Count());
    }

    [Fact]
    public void ChangeOver_SampleCase_SaysDaysMovesAndTheLargestStep()
    {
        var flour = Json("change-over", "change-over.json").GetProperty("flours")[0];
        var steps = flour.GetProperty("steps").EnumerateArray().ToArray();
        Assert.Equal(["2026-07-20", "2026-07-24", "2026-07-28", "2026-08-01", "2026-08-05"], steps.Select(s => s.GetProperty("firstDay").GetString()));
        Assert.Equal(12.7, steps[^1].GetProperty("moves")[0].GetProperty("value").GetDouble(), 2);
        Assert.InRange(flour.GetProperty("largestStepPercent").GetDouble(), 1, 50);
    }

    [Theory]
    [InlineData("value", "season-lot.json", "\"lotTonnes\": 1500", "\"lotTonnes\": -5", "it is -5; a number above 0")]
    [InlineData("value", "season-lot.json", "\"lotTonnes\": 1500,", "", "lotTonnes beside it")]
    [InlineData("value", "season-lot.json", "\"askedPerTonne\": 330", "\"askedPerTonne\": -1", "it is -1; a number of at least 0")]
    [InlineData("value", "season-lot.json", "\"wheatClass\": \"HS\", \"openingTonnes\": 0,", "\"wheatClass\": \"ZZ\", \"openingTonnes\": 0,", "knows no wheat of class ZZ")]
    [InlineData("bands", "season-bands.json", "\"bins\": 3", "\"bins\": 0", "0 bins; give 1 to 20")]
    [InlineData("bands", "season-bands.json", "\"tonnes\": 4500", "\"tonnes\": -4500", "-4500 t cannot be")]
    [InlineData("bands", "season-bands.json", "\"arriving\": [0.25, 0.5, 0.25]", "\"arriving\": [0.25, 0.5]", "add up to 1")]
    [InlineData("bands", "season-bands.json", "{\"code\": \"B03\", \"capacityTonnes\": 3000}, {\"code\": \"B04\", \"capacityTonnes\": 3000}, ", "", "one for each of the 3 bands")]
    [InlineData("change-over", "change-over.json", "\"lastOldDay\": \"2026-08-20\"", "\"lastOldDay\": \"2026-07-01\"", "a day not before the first")]
    [InlineData("change-over", "change-over.json", "\"lastOldDay\": \"2026-08-20\"", "\"lastOldDay\": \"2026-08-01\"", "old crop until 2026-08-04")]
    [InlineData("change-over", "change-over.json", "\"least\": 13.1", "\"least\": 14.1", "lies above its most")]
    [InlineData("change-over", "change-over.json", "0.75, 1 ]", "0.75 ]", "The last step has to be all new crop")]
    public void Harvest_WhatCannotBe_SaysWhatToDo(string verb, string sample, string was, string becomes, string says)
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", sample));
        Assert.Contains(was, text, StringComparison.Ordinal);
        var ran = Shell.Run("season", verb, "--in", folder.File("case.json", text.Replace(was, becomes, StringComparison.Ordinal)));
        Assert.Equal(2, ran.Status);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Harvest_InWords_SaysWhoDecides()
    {
        foreach (var (verb, sample) in new[] { ("value", "season-lot.json"), ("bands", "season-bands.json"), ("change-over", "change-over.json") })
        {
            var (status, output, error) = Shell.Run("season", verb, "--in", Repository.Sample("cases", sample));
            Assert.True(status == 0, error);
            Assert.Contains("person decides", output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("\"least\": 14.4", "\"least\": 14.4, \"most\": 14", 2, "lies above its most")]
    [InlineData("\"what\": \"Protein\"", "\"what\": \"Colour\"", 2, "season.flours[0].limits[0].what")]
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
    [InlineData("--futures", "1e3")]
    [InlineData("--seed", "many")]
    public void Promise_WhatIsNoWholeNumber_IsSaidAsItWasTyped(string option, string typed)
    {
        var (status, _, error) = Shell.Run("season", "promise", "--in", Repository.Sample("cases", "season-promise.json"), option, typed);
        Assert.Equal(2, status);
        Assert.Contains($"{option}: a whole number is needed; read \"{typed}\".", error, StringComparison.Ordinal);
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
