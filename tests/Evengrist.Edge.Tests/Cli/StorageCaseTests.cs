using System.Text.Json;
using CsCheck;
using Evengrist.Bins.Storage;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>Cases about stored wheat through the command line.</summary>
public sealed class StorageCaseTests
{
    [Fact]
    public void Equilibrium_Sample_IsThePointOfTheModelPageWithItsMark()
    {
        // docs/model/equilibrium-moisture.md: Henderson hard, 25 °C, 65 % → 13.79 %, Chung-Pfost 13.65 %; constants from memory.
        var answers = Json("equilibrium", Repository.Sample("cases", "equilibrium.json")).GetProperty("answers").EnumerateArray().ToArray();
        Assert.Equal(["modified Henderson", "modified Chung-Pfost"], answers.Select(a => a.GetProperty("equation").GetString()));
        Assert.Equal([13.79, 13.65], answers.Select(a => Math.Round(a.GetProperty("moisturePercent").GetDouble(), 2)));
        Assert.All(answers, a => Assert.Equal("not verified", a.GetProperty("constants").GetString()));
    }

    [Fact]
    public void Equilibrium_HalseyForWheat_HasNoAnswer()
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("bins", "equilibrium", "--in", folder.File("c.json", """{ "wheat": "hard", "equation": "Halsey", "celsius": 20, "humidityPercent": 60 }"""), "--json");
        Assert.Equal((Exit.NoAnswer, ""), (status, output));
        Assert.Contains("none are made up", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Equilibrium_ConstantsOfOnesOwn_AreUsed()
    {
        using var folder = new Folder();
        var own = """{ "wheat": "own", "celsius": 20, "humidityPercent": 60, "constants": { "constants": [ { "wheat": "own", "form": "Halsey", "a": 5, "b": -0.01, "c": 2.5, "mark": "Read", "source": "by hand" } ], "classes": {} } }""";
        var answer = Assert.Single(Json("equilibrium", folder.File("c.json", own)).GetProperty("answers").EnumerateArray());
        Assert.Equal(8.9235, answer.GetProperty("percentOfDryMatter").GetDouble(), 0.0002);
        Assert.Equal("read, not checked", answer.GetProperty("constants").GetString());
    }

    [Fact]
    public void Aeration_Sample_IsTheWorkedCaseOfTheModelPage()
    {
        // docs/model/aeration.md.
        var answer = Json("aeration", Repository.Sample("cases", "aeration.json"));
        Assert.Equal([150.0, 15.0, 239, 1868, 2429], new[] { "ruleHours", "ruleDays", "hoursByWarmthAlone", "pascalsLoose", "pascalsPacked" }.Select(n => Math.Round(answer.GetProperty(n).GetDouble())));
        var airs = answer.GetProperty("airs").EnumerateArray().ToArray();
        Assert.Equal((13.9, 96.0), (Math.Round(airs[0].GetProperty("effectiveCelsius").GetDouble(), 1), Math.Round(airs[0].GetProperty("frontHours").GetDouble())));

        // The damp air of 22 °C is cooler by the thermometer and cools nothing.
        Assert.Equal((3, 2), (answer.GetProperty("hoursCoolerByDryBulb").GetInt32(), answer.GetProperty("hoursThatCool").GetInt32()));
        Assert.Equal((true, false, "wets"), (airs[1].GetProperty("coolerByDryBulb").GetBoolean(), airs[1].GetProperty("cools").GetBoolean(), airs[1].GetProperty("water").GetString()));
        Assert.Contains("memory", answer.GetProperty("pressure").GetString(), StringComparison.Ordinal);
        Assert.Contains("not verified", answer.GetProperty("constants").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Storage_Sample_GivesDaysLifeAndReasons()
    {
        // docs/model/safe-storage.md: 17 %, 25 °C: 20.7 days by the equation, 12.4 to plan by, 15 measured; 15 %, 20 °C for 30 days: 0.497 of its life.
        var answer = Json("storage", Repository.Sample("cases", "storage.json"));
        var layers = answer.GetProperty("layersBottomFirst").EnumerateArray().ToDictionary(l => l.GetProperty("name").GetString()!);
        double Of(string layer, string what) => layers[layer].GetProperty(what).GetDouble();
        Assert.Equal((20.7, 12.4, 15.0), (Math.Round(Of("seventeen", "daysByEquation"), 1), Math.Round(Of("seventeen", "alarmDays"), 1), Math.Round(Of("seventeen", "daysMeasured"), 6)));
        Assert.Equal(0.497, Of("fifteen", "lifeUsed"), 0.001);
        Assert.True(layers["bottom"].GetProperty("lifeUsedIsAtMost").GetBoolean());
        Assert.Equal("temperature not read: taken as 25 °C throughout", layers["bottom"].GetProperty("assumed").GetString());
        Assert.Contains("from memory", layers["fifteen"].GetProperty("equation").GetString(), StringComparison.Ordinal);
        var first = answer.GetProperty("reasons")[0];
        Assert.Equal(("act", "Heating"), (first.GetProperty("level").GetString(), first.GetProperty("about").GetString()));
        Assert.DoesNotContain("is safe", answer.GetRawText(), StringComparison.OrdinalIgnoreCase);
        Assert.True(answer.GetProperty("cautions").GetArrayLength() >= 3);
    }

    [Theory]
    [InlineData("equilibrium", """{ "wheat": "rye", "celsius": 20, "humidityPercent": 60 }""", "$.wheat: read \"rye\"; expected a wheat there are constants for: hard, soft")]
    [InlineData("equilibrium", """{ "wheat": "hard", "celsius": 20 }""", "$: read \"an object\"; expected either humidityPercent or moisturePercent")]
    [InlineData("equilibrium", """{ "wheat": "hard", "celsius": 200, "humidityPercent": 60 }""", "$.celsius: read \"200\"; expected a number from -20 to 60")]
    [InlineData("equilibrium", """{ "wheat": "hard", "equation": "GAB", "celsius": 20, "humidityPercent": 60 }""", "$.equation: read \"GAB\"; expected an equation: Henderson")]
    [InlineData("equilibrium", """{ "wheat": "hard", "celsius": 20, "humidityPercent": 60, "constants": {} }""", "$.constants: read \"an object\"; expected constants that can be")]
    [InlineData("aeration", """{ "wheat": "hard", "equation": "Oswin", "grain": { "celsius": 20, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.1 }, "airs": [] }""", "$.equation: read \"Oswin\"; expected an equation there are constants of")]
    [InlineData("aeration", """{ "wheat": "hard", "grain": { "celsius": 20, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.1, "m3PerMinTonne": 1 }, "airs": [] }""", "$.airflow: read \"an object\"; expected one of")]
    [InlineData("aeration", """{ "wheat": "hard", "grain": { "celsius": 20, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.1 }, "airs": [ { "celsius": 10, "humidityPercent": 101 } ] }""", "$.airs[0].humidityPercent: read \"101\"")]
    [InlineData("storage", """{ "wheat": "hard", "asOf": "2025-09-01T08:00Z", "layers": [ { "t": 5, "arrived": "2025-09-02T08:00Z" } ] }""", "$.layers[0].arrived: read \"2025-09-02T08:00Z\"; expected a moment not after asOf")]
    [InlineData("storage", """{ "wheat": "hard", "asOf": "2025-09-01T08:00Z", "layers": [], "cables": [ { "point": "top", "at": "2025-08-02T08:00Z", "celsius": 20 } ] }""", "$.cables[0].point: read \"top\"; expected a cable and a height")]
    [InlineData("storage", """{ "wheat": "hard", "asOf": "yesterday", "layers": [ { "t": -5, "moisture": 12 } ] }""", "$.layers[0].moisture: read \"moisture\"; expected one of name, t, kg, moisturePercent")]
    public void Run_BadCase_SaysWhatAndWhere(string verb, string text, string said)
    {
        using var folder = new Folder();
        var (status, output, error) = Shell.Run("bins", verb, "--in", folder.File("case.json", text), "--json");
        Assert.Equal((Exit.BadInput, ""), (status, output));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("storage")]
    [InlineData("equilibrium")]
    [InlineData("aeration")]
    public void Help_PosedVerb_PrintsTheCaseAndAnExampleThatWorks(string verb)
    {
        var (status, output, _) = Shell.Run("bins", verb, "--help");
        Assert.Equal(Exit.Done, status);
        using var folder = new Folder();
        var file = folder.File("case.json", output[(output.IndexOf("For example:", StringComparison.Ordinal) + "For example:".Length)..]);
        Assert.Equal(Exit.Done, Shell.Run("bins", verb, "--in", file, "--json").Status);
        Assert.Equal(Exit.Done, Shell.Run("bins", verb, "--in", file).Status);
    }

    [Fact]
    public void Read_GoodCaseDamaged_GivesAnAnswerOrFaultsAndNeverThrows()
    {
        var cases = new[] { "storage.json", "aeration.json", "equilibrium.json" }.Select(f => File.ReadAllBytes(Repository.Sample("cases", f))).ToArray();
        Gen.Select(Gen.Int[0, cases.Length - 1], Gen.Select(Gen.Double[0, 1], Gen.Byte).Array[1, 4]).Sample((which, damages) =>
        {
            var bytes = cases[which].ToArray();
            foreach (var (where, value) in damages)
            {
                bytes[(int)(where * (bytes.Length - 1))] = value;
            }

            using var stream = new MemoryStream(bytes);
            return which switch
            {
                0 => StorageCase.Read(stream).Then(c => Parsing.Got(BinRiskAnswer.Of(BinRisk.Of(c.Bin, c.Constants, c.At)))) is { } a && a.Ok == (a.Faults.Count == 0),
                1 => AerationCase.Read(stream).Then(AerationAnswer.To) is { } a && a.Ok == (a.Faults.Count == 0),
                _ => EquilibriumCase.Read(stream).Then(c => Parsing.Got(EquilibriumAnswer.To(c))) is { } a && a.Ok == (a.Faults.Count == 0),
            };
        }, iter: 1000);
    }

    private static JsonElement Json(string verb, string file)
    {
        var (status, output, error) = Shell.Run("bins", verb, "--in", file, "--json");
        Assert.Equal((Exit.Done, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
