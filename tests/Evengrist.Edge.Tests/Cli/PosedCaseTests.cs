using System.Text.Json;
using Evengrist.Cli;
using Evengrist.Edge.Tests.Plant;

namespace Evengrist.Edge.Tests.Cli;

/// <summary>The posed cases of the samples, through the command line.</summary>
public sealed class PosedCaseTests
{
    // The worked case of docs/model/outflow.md (a design of ours): layers A, B, C of 100 t, core share 0.10; draw by draw A, B, C in tonnes for each hypothesis.
    private static readonly (decimal From, decimal Until, double[] First, double[] Core, double[] Stirred)[] Table72 =
    [
        (0, 10, [10, 0, 0], [10, 0, 0], [10 / 3.0, 10 / 3.0, 10 / 3.0]),
        (10, 30, [20, 0, 0], [0, 10, 10], [20 / 3.0, 20 / 3.0, 20 / 3.0]),
        (30, 120, [70, 20, 0], [0, 0, 90], [30, 30, 30]),
        (120, 210, [0, 80, 10], [0, 90, 0], [30, 30, 30]),
        (210, 300, [0, 0, 90], [90, 0, 0], [30, 30, 30]),
    ];

    [Fact]
    public void Outflow_TableOfThreeHypotheses_IsReproduced()
    {
        var draws = Json("bins", "outflow", "--in", Repository.Sample("cases", "outflow-three-layers.json"), "--json").GetProperty("draws");
        Assert.Equal(Table72.Length, draws.GetArrayLength());
        for (var i = 0; i < Table72.Length; i++)
        {
            var (from, until, first, core, stirred) = Table72[i];
            Assert.Equal((from, until), (draws[i].GetProperty("fromTonnes").GetDecimal(), draws[i].GetProperty("untilTonnes").GetDecimal()));
            foreach (var (hypothesis, tonnes) in new[] { ("firstInFirstOut", first), ("coreFirst", core), ("stirred", stirred) })
            {
                var lots = draws[i].GetProperty("lots").EnumerateArray().ToDictionary(l => l.GetProperty("lot").GetString()!, l => l.GetProperty("tonnes").GetProperty(hypothesis).GetDouble());
                Assert.Equal(tonnes, new[] { "A", "B", "C" }.Select(l => lots.GetValueOrDefault(l)), (a, b) => Math.Abs(a - b) < 1e-6);
            }
        }
    }

    [Fact]
    public void Outflow_RefillOnAPartDrawnBin_CoreFirstGivesTheNewGrainBeforeTheOld()
    {
        // docs/model/outflow.md: new grain falls on the crater and leaves before the old side grain.
        using var folder = new Folder();
        var file = folder.File("case.json", """{ "coreShare": 0.1, "layers": [ { "lot": "OLD", "t": 100 } ], "steps": [ { "draw": { "t": 30 } }, { "fill": { "lot": "NEW", "t": 20 } }, { "draw": { "kg": 20000 } } ], "hypotheses": [ "coreFirst", "firstInFirstOut" ] }""");
        var second = Json("bins", "outflow", "--in", file, "--json").GetProperty("draws")[1].GetProperty("lots");
        var fresh = second.EnumerateArray().Single(l => l.GetProperty("lot").GetString() == "NEW").GetProperty("tonnes");
        Assert.Equal(20, fresh.GetProperty("coreFirst").GetDouble(), 1e-6);
        Assert.Equal(0, fresh.GetProperty("firstInFirstOut").GetDouble(), 1e-6);
    }

    [Fact]
    public void Roots_WorkedTrace_GivesTheSharesWrittenDown()
    {
        // The worked case of docs/model/tracing.md, all stirred: T1 0.306122, T2 0.293878, T3 0.400000 of the wheat; water 0.039773 of the whole.
        var roots = Json("tracing", "roots", "--in", Repository.Sample("cases", "roots-bag.json"), "--json").GetProperty("roots").EnumerateArray().ToArray();
        double Of(string truck, string share) => roots.Single(r => r.GetProperty("truck").GetString() == truck).GetProperty(share).GetProperty("expected").GetDouble();
        Assert.Equal(0.306122, Of("T1", "grainShare"), 5e-7);
        Assert.Equal(0.293878, Of("T2", "grainShare"), 5e-7);
        Assert.Equal(0.400000, Of("T3", "grainShare"), 5e-7);
        Assert.Equal(0.039773, roots.Single(r => r.GetProperty("kind").GetString() == "water").GetProperty("share").GetProperty("expected").GetDouble(), 5e-7);
        Assert.Equal(1, roots.Sum(r => r.GetProperty("share").GetProperty("expected").GetDouble()), 1e-9);
    }

    [Fact]
    public void Reach_SuspectTruckInB14_GivesTheNumbersOfTheRecallScenario()
    {
        // The recall case of docs/model/reckoning.md (invented; arithmetic of a stirred tank): plug flow 109 (±1) pallets above 50 kg over 9.04 h holding 87.8 %, 180 above 10 kg, 277 above 1 kg (99.8 %), peak 26.7 %, 18.17 t (±0.05) in all;
        // core flow as that scenario has it, without a core: top layer first, bin-hours 42.86 to 46.62. Belief 0.7/0.2/0.1: at bin-hour 60 expected 81.9 kg/t and chance 0.70 above 50 kg; at bin-hour 45 38.6 kg/t and 0.20.
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "reach-b14.json"));
        var answer = Json("tracing", "reach", "--in", folder.File("all.json", text.Replace("\"threshold\": { \"kg\": 50 },", "\"threshold\": { \"kg\": 0.001 },", StringComparison.Ordinal)), "--json");
        var at50 = Json("tracing", "reach", "--in", Repository.Sample("cases", "reach-b14.json"), "--json");
        var packages = answer.GetProperty("packages").EnumerateArray().ToArray();
        var plug = packages.Select(p => (Code: p.GetProperty("code").GetString()!, Kg: p.GetProperty("kilograms").GetProperty("each").GetProperty("firstInFirstOut").GetDouble())).ToArray();
        double Held(double least) => plug.Where(p => p.Kg > least).Sum(p => p.Kg) / plug.Sum(p => p.Kg);

        Assert.InRange(at50.GetProperty("packagesOverThreshold").GetProperty("firstInFirstOut").GetInt32(), 108, 110);
        Assert.InRange(plug.Count(p => p.Kg > 50), 108, 110);
        Assert.InRange(plug.Count(p => p.Kg > 10), 179, 181);
        Assert.InRange(plug.Count(p => p.Kg > 1), 276, 278);
        Assert.Equal(0.878, Held(50), 0.002);
        Assert.Equal(0.998, Held(1), 0.002);
        Assert.Equal(267, plug.Max(p => p.Kg), 2.5); // The peak is a moment; a pallet is the mean of 298 s round it.
        Assert.Equal(18_170, plug.Sum(p => p.Kg), 50.0);
        var over50 = plug.Where(p => p.Kg > 50).Select(p => int.Parse(p.Code[1..], System.Globalization.CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(9.04, (over50.Max() - over50.Min() + 1) * 298.137 / 3600, 0.09);
        Assert.True(at50.GetProperty("unionOverThreshold").GetInt32() > 109);

        // Out of the temper bin 18 h after it left B14; a pallet takes 298.137 s.
        JsonElement AtBinHour(double hour) => packages.Single(p => p.GetProperty("code").GetString() == $"P{(int)Math.Floor((hour + 18) * 3600 / 298.137) + 1}");
        Assert.Equal(81.9, AtBinHour(60).GetProperty("kilograms").GetProperty("expected").GetDouble(), 2.0);
        Assert.Equal(38.6, AtBinHour(45).GetProperty("kilograms").GetProperty("expected").GetDouble(), 1.0);
        var chances = at50.GetProperty("packages").EnumerateArray().ToDictionary(p => p.GetProperty("code").GetString()!, p => p.GetProperty("chanceOverThreshold").GetDouble());
        Assert.Equal(0.70, chances[AtBinHour(60).GetProperty("code").GetString()!], 1e-9);
        Assert.Equal(0.20, chances[AtBinHour(45).GetProperty("code").GetString()!], 1e-9);
    }

    [Fact]
    public void Settle_WorkedTicket_IsPaidToTheCent()
    {
        // The worked ticket of docs/model/settlement.md.
        var answer = Json("intake", "settle", "--in", Repository.Sample("cases", "settle.json"), "--json");
        Assert.Equal(26_340m, answer.GetProperty("netKg").GetDecimal());
        Assert.Equal(26_023.9, answer.GetProperty("cleanKg").GetDouble(), 0.1);
        Assert.Equal(25_813.3, answer.GetProperty("settledKg").GetDouble(), 0.1);
        Assert.Equal(948.48, answer.GetProperty("bushels").GetDouble(), 0.01);
        Assert.Equal(6.84m, answer.GetProperty("price").GetDecimal());
        Assert.Equal(6_487.58, answer.GetProperty("pay").GetDouble(), 0.02);
    }

    [Fact]
    public void Settle_ReadingTheContractNeedsIsMissing_HasNoAnswerAndSaysWhy()
    {
        using var folder = new Folder();
        var text = File.ReadAllText(Repository.Sample("cases", "settle.json")).Replace(", \"protein [% 12mb]\": 13.1", "", StringComparison.Ordinal);
        var (status, output, error) = Shell.Run("intake", "settle", "--in", folder.File("case.json", text), "--json");
        Assert.Equal((Exit.NoAnswer, ""), (status, output));
        Assert.Contains("rotein", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bins", "outflow")]
    [InlineData("tracing", "roots")]
    [InlineData("tracing", "reach")]
    [InlineData("tracing", "recall")]
    [InlineData("intake", "settle")]
    [InlineData("intake", "grade")]
    public void Help_PosedVerb_PrintsTheCaseAndAnExampleThatWorks(string room, string verb)
    {
        var (status, output, _) = Shell.Run(room, verb, "--help");
        Assert.Equal(Exit.Done, status);
        using var folder = new Folder();
        var example = output[(output.IndexOf("For example:", StringComparison.Ordinal) + "For example:".Length)..];
        if (verb == "reach")
        {
            example = example.Replace("\"P2\"", "\"T1\"", StringComparison.Ordinal);
        }

        Assert.Equal(Exit.Done, Shell.Run(room, verb, "--in", folder.File("case.json", example), "--json").Status);
    }

    private static JsonElement Json(params string[] args)
    {
        var (status, output, error) = Shell.Run(args);
        Assert.Equal((Exit.Done, ""), (status, error));
        return JsonDocument.Parse(output).RootElement;
    }
}
