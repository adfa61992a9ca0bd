using System.Diagnostics;
using Evengrist.Packing.Runs;
using Evengrist.Planning.Packing;

namespace Evengrist.Planning.Tests.Packing;

public sealed class RunOrderTests
{
    /// <summary>Case of a working day: Bread-AP-HG-WW-SM, ends at 22.83 h, nothing late, 2.83 h of changing over [worked by hand: 20 h of packing, 0.33 + 0.5 + 0.5 + 1.5 between].</summary>
    [Fact]
    public void Order_OneLineFiveFlours_IsTheOneWorkedByHand()
    {
        var solved = Solved(RunCases.OneLine());
        Assert.True(solved.IsProven);
        Assert.Equal(["Bread", "AP", "HG", "WW", "SM"], solved.Plan.Runs.Select(r => r.Run.Code));
        Assert.Equal(22.83, solved.Plan.End / 60.0, 2);
        Assert.Equal(2.83, solved.Plan.ChangeMinutes / 60.0, 2);
        Assert.Equal(0, solved.Plan.Late);
        Assert.Empty(solved.Plan.ToSign);
    }

    /// <summary>A rush order of an hour: planned anew from the plan in force within five seconds; soy stays last, or a clean-down is to be signed.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Rush_Inserted_IsPlannedAnewInSecondsAndSoyStaysLast(bool mayCleanDown)
    {
        var before = Solved(RunCases.OneLine());
        var began = Stopwatch.GetTimestamp();
        var after = Solved(RunCases.OneLine(RunCases.Run("WW", 1, 20, "rush")) with { MayCleanDown = mayCleanDown }, new RunOrderOptions { From = before.Plan });
        Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(5 + 1 + 4), "five seconds to search, one to settle, and room for a machine at work on other tests");
        Assert.True(after.IsProven);
        Assert.True(after.Plan.Runs[^1].Run.Flour == "SM" || after.Plan.ToSign.Count > 0);
        Assert.Equal(RunCases.Least(RunCases.OneLine(RunCases.Run("WW", 1, 20, "rush")) with { MayCleanDown = mayCleanDown }), after.Plan.Cost, 2);
    }

    /// <summary>Soy due first: with a clean-down it goes first and a person signs, without one it comes last and late.</summary>
    [Fact]
    public void Allergen_DueFirst_IsFollowedByASignedCleanDownOrComesLast()
    {
        var spec = RunCases.OneLine() with { Runs = [RunCases.Run("SM", 2, 2), RunCases.Run("AP", 5, 40)] };
        var signed = Solved(spec).Plan;
        Assert.Equal(["SM", "AP"], signed.Runs.Select(r => r.Run.Code));
        Assert.Equal("AP", Assert.Single(signed.ToSign).Run.Code);
        Assert.Equal(["soy"], signed.Runs[1].Before.Allergens);
        Assert.Equal(("waste", 0.2), Assert.Single(signed.Flushed));
        var last = Solved(spec with { MayCleanDown = false }).Plan;
        Assert.Equal(["AP", "SM"], last.Runs.Select(r => r.Run.Code));
        Assert.Empty(last.ToSign);
    }

    /// <summary>A change that is no clean-down never stands between soy and a flour without.</summary>
    [Fact]
    public void Allergen_WithoutACleanDownRule_ComesLast()
    {
        var spec = RunCases.OneLine() with { Rules = [new(null, null, 30)], Runs = [RunCases.Run("SM", 2, 2), RunCases.Run("AP", 5, 7)] };
        Assert.Equal(["AP", "SM"], Solved(spec).Plan.Runs.Select(r => r.Run.Code));
        Assert.IsType<RunOrderClash>(RunOrderSolver.Solve(spec with { Lines = [new("L1") { LastFlour = "SM" }], Runs = [RunCases.Run("AP", 5, 7)] }));
    }

    /// <summary>Total tardiness of five jobs [M. Pinedo, Scheduling, example of 1 || ΣT: 370; from memory, recomputed over every order].</summary>
    [Fact]
    public void Tardiness_FiveJobs_IsThePublishedLeast()
    {
        (int Minutes, int Due)[] jobs = [(121, 260), (79, 266), (147, 266), (83, 336), (130, 337)];
        var spec = new RunOrderSpec([.. jobs.Select((j, i) => new PackingRun($"{i + 1}", "AP", 10, j.Due, [new("L1", j.Minutes)]))], [new("L1")], []) { Costs = new(60, 0, 0) };
        Assert.Equal(370, RunCases.Least(spec), 6);
        var solved = Solved(spec);
        Assert.True(solved.IsProven);
        Assert.Equal(370, solved.Plan.Late);
    }

    /// <summary>Drawn runs with drawn rules: no order out of all costs less.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Order_DrawnRuns_CostsWhatTheBestOfAllOrdersDoes(int seed)
    {
        var draw = new Random(seed);
        string[] flours = ["A", "B", "C", "D"];
        var spec = new RunOrderSpec(
            [.. Enumerable.Range(0, 6).Select(i => new PackingRun($"R{i}", flours[draw.Next(4)], 10, draw.Next(120, 1200), [new("L1", draw.Next(60, 300))]) { Weight = draw.Next(1, 4), Ready = draw.Next(0, 200) })],
            [new("L1") { LastFlour = "A", FreeFrom = 45 }],
            [.. flours.SelectMany(a => flours.Where(b => a != b).Select(b => new ChangeRule(a, b, draw.Next(0, 120)) { FlushTonnes = draw.Next(0, 3) * 0.1, IsCleanDown = a == "C" }))])
        {
            Allergens = new Dictionary<string, IReadOnlyList<string>> { ["C"] = ["soy"] },
        };
        var solved = Solved(spec);
        Assert.True(solved.IsProven);
        Assert.Equal(RunCases.Least(spec), solved.Plan.Cost, 3);
        Assert.True(solved.Bound <= solved.Plan.Cost + 0.001);
        foreach (var plain in new[] { PlainOrder.FirstCome(spec), PlainOrder.EarliestDue(spec) })
        {
            Assert.True(RunPlanCheck.Broken(spec, plain).Count > 0 || plain.Cost >= solved.Plan.Cost - 0.001);
        }
    }

    [Fact]
    public void Order_OfRunsGivenTheOtherWayRound_CostsTheSameAndTwiceIsTheSamePlan()
    {
        var spec = RunCases.OneLine();
        Assert.Equal(Solved(spec).Plan.Cost, Solved(spec with { Runs = [.. spec.Runs.Reverse()] }).Plan.Cost, 6);
        Assert.Equal(Places(Solved(spec)), Places(Solved(spec)));

        static IEnumerable<string> Places(RunOrderSolved solved) => solved.Plan.Runs.Select(r => $"{r.Run.Code} {r.Line} {r.Start}");
    }

    [Fact]
    public void Weight_OfARun_NeverMakesItLater()
    {
        var spec = RunCases.OneLine() with { Runs = [RunCases.Run("AP", 5, 4), RunCases.Run("HG", 4, 4)] };
        var plain = Solved(spec).Plan.Runs.Single(r => r.Run.Code == "AP").Late;
        var heavy = Solved(spec with { Runs = [spec.Runs[0] with { Weight = 10 }, spec.Runs[1]] }).Plan.Runs.Single(r => r.Run.Code == "AP").Late;
        Assert.True(heavy <= plain);
    }

    private static RunOrderSolved Solved(RunOrderSpec spec, RunOrderOptions? options = null)
    {
        var solved = Assert.IsType<RunOrderSolved>(RunOrderSolver.Solve(spec, options));
        Assert.Empty(RunPlanCheck.Broken(spec, solved.Plan));
        return solved;
    }
}
