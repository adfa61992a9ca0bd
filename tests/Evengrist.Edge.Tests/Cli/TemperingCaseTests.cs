using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Tempering water through the command line, as a case and by options.</summary>
public sealed class TemperingCaseTests
{
    [Fact]
    public void Water_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        // docs/model/tempering.md: 17 500 kg/h from 11.2 to 16.0 % → 1000 L/h; filled from 22:10, 18 h: first ready at 16:10, last 18 h after the end.
        var answer = Json("--in", Repository.Sample("cases", "temper-water.json"));
        Assert.Equal(1000, answer.GetProperty("total").GetProperty("litresPerHour").GetDouble(), 1.0);
        Assert.Equal(16, answer.GetProperty("firstBreakPercent").GetDouble(), 1e-9);
        Assert.InRange(answer.GetProperty("firstBreakPlusMinus").GetDouble(), 0.25, 0.4);
        var rest = answer.GetProperty("rest");
        Assert.Equal(("2026-01-14T22:10:00Z", "2026-01-15T04:10:00Z"), (rest.GetProperty("firstReady").GetString(), rest.GetProperty("lastReady").GetString()));
        Assert.Contains("from memory", rest.GetRawText(), StringComparison.Ordinal);
        Assert.True(answer.GetProperty("cautions").GetArrayLength() >= 5);
    }

    [Fact]
    public void Water_ByOptions_IsTheSameAsByACase()
    {
        var soft = Json("--rate", "7.5", "--moisture", "12.6", "--aim", "14.8").GetProperty("total");
        Assert.Equal(194, soft.GetProperty("litresPerHour").GetDouble(), 1.0); // docs/model/tempering.md.
        var staged = Json("--tonnes", "1", "--moisture", "9", "--aim", "16.5", "--stage", "14.5");
        Assert.Equal([64.327, 25.493], staged.GetProperty("stages").EnumerateArray().Select(s => Math.Round(s.GetProperty("kilograms").GetDouble(), 3)));
        var advised = Json("--rate", "17.5", "--moisture", "11.2", "--hardness", "hard", "--season", "dry");
        Assert.Equal(16.5, advised.GetProperty("aimPercent").GetDouble());
        Assert.Contains("read", advised.GetProperty("aimBecause")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Water_AimBelowTheWheat_HasNoAnswerAndSaysWhy()
    {
        var (status, output, error) = Shell.Run("tempering", "water", "--rate", "5", "--moisture", "16", "--aim", "15", "--json");
        Assert.Equal((Exit.NoAnswer, ""), (status, output));
        Assert.Contains("would have to be dried", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "tonnesPerHour": -5, "moisturePercent": 11, "aimPercent": 16 }""", "$.tonnesPerHour: read \"-5\"; expected a number from 0.001 to 1000")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 2, "aimPercent": 16 }""", "$.moisturePercent: read \"2\"; expected a number from 5 to 30")]
    [InlineData("""{ "moisturePercent": 11, "aimPercent": 16 }""", "$: read \"an object\"; expected how much wheat")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "hardness": "glassy", "season": "dry" }""", "$.hardness: read \"glassy\"; expected one of soft, semiHard, hard, veryHard")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "hardness": "hard" }""", "$.season: read nothing; expected a value; the member is missing")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "aimPercent": 16, "season": "dry" }""", "either aimPercent, or hardness and season")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "aimPercent": 16, "rest": { "hours": -1, "wheatCelsius": 20 } }""", "$.rest.hours: read \"-1\"; expected a number from 0 to 72")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "aimPercent": 16, "fill": { "from": "2026-01-14T22:10Z", "until": "2026-01-14T23:10Z" } }""", "$.fill: read \"an object\"; expected a rest beside it")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "aimPercent": 16, "rest": { "hours": 8, "wheatCelsius": 20 }, "fill": { "from": "2026-01-14T22:10Z", "until": "2026-01-14T21:10Z" } }""", "an end that is not before the beginning")]
    [InlineData("""{ "tonnes": 5, "moisturePercent": 11, "hardness": "hard", "season": "dry", "aims": { "aims": [], "classes": {} } }""", "$.aims: read \"an object\"; expected aims that can be. There is no line of aims.")]
    [InlineData("[]", "$: read \"a list\"; expected an object")]
    public void Water_BadCase_SaysWhatAndWhere(string text, string said)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("tempering", "water", "--in", folder.File("case.json", text), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Water_NothingOrBoth_SaysWhatToDo()
    {
        Assert.Contains("options such as --rate", Shell.Run("tempering", "water").Error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Shell.Run("tempering", "water", "--in", "x.json", "--rate", "5").Status);
        Assert.Contains("$.tonnesPerHour: read \"abc\"; expected a number", Shell.Run("tempering", "water", "--rate", "abc", "--moisture", "11", "--aim", "16").Error, StringComparison.Ordinal);
        Assert.Contains("$.moisturePercent", Shell.Run("tempering", "water", "--rate", "5", "--aim", "16").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_PrintsTheCaseAndAnExampleThatWorks()
    {
        var (status, output, _) = Shell.Run("tempering", "water", "--help");
        Assert.Equal(Exit.Done, status);
        using var folder = new Folder();
        var file = folder.File("case.json", output[(output.IndexOf("For example:", StringComparison.Ordinal) + "For example:".Length)..]);
        var said = Shell.Run("tempering", "water", "--in", file);
        Assert.Equal(Exit.Done, said.Status);
        Assert.Contains("they differ by", said.Output, StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] args)
    {
        var (status, output, error) = Shell.Run(["tempering", "water", .. args, "--json"]);
        Assert.Equal((Exit.Done, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
