using Evengrist.Packing.Runs;
using Evengrist.Planning.Packing;

namespace Evengrist.Planning.Tests.Packing;

/// <summary>Lines, locks, bins and crews.</summary>
public sealed class RunOrderLimitTests
{
    private static readonly ChangeRule Half = new(null, null, 30);

    [Fact]
    public void Locked_Runs_StayAndTheOthersGoRound()
    {
        var spec = RunCases.OneLine();
        var locked = spec with { Runs = [.. spec.Runs.Select(r => r.Code == "HG" ? r with { Locked = new("L1", 0) } : r)] };
        var plan = Assert.IsType<RunOrderSolved>(RunOrderSolver.Solve(locked)).Plan;
        Assert.Equal(0, plan.Runs.Single(r => r.Run.Code == "HG").Start);
        Assert.Empty(RunPlanCheck.Broken(locked, plan));
    }

    [Fact]
    public void Locked_OverEachOther_ClashAndAreNamed()
    {
        var spec = RunCases.OneLine();
        var clash = Assert.IsType<RunOrderClash>(RunOrderSolver.Solve(spec with { Runs = [.. spec.Runs.Select((r, i) => i < 2 ? r with { Locked = new("L1", 60) } : r)] }));
        Assert.Equal(2, clash.Clash.Count);
        Assert.All(clash.Clash, said => Assert.Contains("stays on L1", said, StringComparison.Ordinal));
    }

    /// <summary>Two lines, two runs of four hours due together: side by side, none late.</summary>
    [Fact]
    public void Lines_Two_PackSideBySideUnlessThereAreTooFewPeople()
    {
        RunPlace[] both = [new("L1", 240), new("L2", 300)];
        var spec = new RunOrderSpec([new("1", "AP", 40, 300, both), new("2", "HG", 40, 300, both)], [new("L1") { Crew = 2 }, new("L2") { Crew = 2 }], [Half]);
        Assert.Equal(0, Solved(spec).Plan.Late);
        var few = Solved(spec with { Crew = [new(0, 2000, 3)] }).Plan;
        Assert.True(few.Runs.Max(r => r.Start) >= few.Runs.Min(r => r.End));
        Assert.True(few.Late > 0);
    }

    /// <summary>Nobody is there from the fourth to the eighth hour: a run of three hours is before or after.</summary>
    [Fact]
    public void Crew_Away_NothingRunsMeanwhile()
    {
        var spec = new RunOrderSpec([RunCases.Run("AP", 3, 3), RunCases.Run("HG", 3, 7)], [new("L1")], [Half]) { Crew = [new(0, 240, 2), new(480, 2000, 2)] };
        var plan = Solved(spec).Plan;
        Assert.Equal(0, plan.Runs[0].Start);
        Assert.Equal(480, plan.Runs[1].Start);
    }

    /// <summary>A bin with 10 t that the mill fills at 10 t/h from the second hour on: a run of 30 t in an hour waits until there is enough.</summary>
    [Fact]
    public void Bin_ThatWouldRunDry_MakesTheRunWait()
    {
        var bin = new FlourBin("F-AP", 10, 200, [new(120, 600, 10)]);
        var spec = new RunOrderSpec([RunCases.Run("AP", 1, 1) with { Tonnes = 30, Bin = "F-AP" }], [new("L1")], [Half]) { Bins = [bin] };
        var plan = Solved(spec).Plan;
        Assert.InRange(plan.Runs[0].Start, 180, 240); // 30 t are drawn evenly over the hour; slices on the safe side ask for all of it at the start.
        Assert.True(RunPlanCheck.Level(plan, bin, plan.Runs[0].End) >= 0);
        Assert.Contains("runs dry", Assert.Single(RunPlanCheck.Broken(spec, RunPlan.Of(spec, [new("L1", 0)]))), StringComparison.Ordinal);
    }

    [Fact]
    public void Bin_WithoutEnoughEver_ClashesAndIsNamed()
    {
        var spec = new RunOrderSpec([RunCases.Run("AP", 1, 1) with { Tonnes = 30, Bin = "F-AP" }], [new("L1")], [Half]) { Bins = [new("F-AP", 10, 200, [])] };
        Assert.Contains("Bin F-AP never runs dry", Assert.Single(Assert.IsType<RunOrderClash>(RunOrderSolver.Solve(spec)).Clash), StringComparison.Ordinal);
    }

    /// <summary>A bin that the mill fills: it is drawn before it overflows though its flour is due later; where nothing helps, the plan says when.</summary>
    [Fact]
    public void Bin_ThatWouldOverflow_IsDrawnFirstOrSaidWhen()
    {
        var spec = new RunOrderSpec([RunCases.Run("AP", 4, 4), RunCases.Run("HG", 4, 20) with { Tonnes = 60, Bin = "F-HG" }], [new("L1")], [Half]) { Bins = [new("F-HG", 80, 100, [new(0, 300, 10)])] };
        var first = Solved(spec);
        Assert.Empty(first.Choked);
        Assert.Equal("HG", first.Plan.Runs[0].Run.Code);
        var said = Solved(spec with { Bins = [new("F-HG", 80, 100, [new(0, 1200, 40)])] });
        Assert.Equal("F-HG", Assert.Single(said.Choked).Bin);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(61)]
    public void Spec_TooFewOrMany_IsRefused(int runs)
    {
        var refused = Assert.IsType<RunOrderRefused>(RunOrderSolver.Solve(new([.. Enumerable.Range(0, runs).Select(i => RunCases.Run("AP", 1, 1, $"{i}"))], [new("L1")], [])));
        Assert.Contains("1 to 60 runs", Assert.Single(refused.Faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Spec_WithFaults_NamesEach()
    {
        var refused = Assert.IsType<RunOrderRefused>(RunOrderSolver.Solve(new(
            [new("1", "AP", 0, -1, []), new("1", "AP", 5, 10, [new("L9", 0)]) { Bin = "F-X", Locked = new("L1", -1) }], [new("L1")], [new("A", null, -1)])));
        Assert.All(["1 is there twice", "more than 0", "within", "no line", "L9, which is not", "at least a minute", "F-X, which is not", "locked to a line", "takes 0 minutes or more"],
            word => Assert.Contains(refused.Faults, f => f.Contains(word, StringComparison.Ordinal)));
    }

    private static RunOrderSolved Solved(RunOrderSpec spec)
    {
        var solved = Assert.IsType<RunOrderSolved>(RunOrderSolver.Solve(spec));
        Assert.Empty(RunPlanCheck.Broken(spec, solved.Plan));
        return solved;
    }
}
