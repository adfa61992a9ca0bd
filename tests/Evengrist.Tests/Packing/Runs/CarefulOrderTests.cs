using Evengrist.Packing.Runs;

namespace Evengrist.Tests.Packing.Runs;

/// <summary>The order a careful person would make; cases are derived.</summary>
public sealed class CarefulOrderTests
{
    private static PackingRun Run(string code, string flour, double tonnes, int due, int minutes, string? bin = null) => new(code, flour, tonnes, due, [new("L1", minutes)]) { Bin = bin };

    [Fact]
    public void Of_FlourThatIsNotThere_IsWaitedFor()
    {
        var spec = new RunOrderSpec([Run("a", "WB", 10, 60, 60, "F")], [new("L1")], []) { Bins = [new("F", 4, 100, [new(0, 600, 6)])] };
        var plan = CarefulOrder.Of(spec)!;
        // 4 t lie there and 6 t an hour come, counted at the end of each half hour; all of a run of an hour is counted as gone at its beginning: at minute 60 there are 10 t.
        Assert.Equal(60, plan.Runs[0].Start);
        Assert.Empty(RunPlanCheck.Broken(spec, plan));
    }

    [Fact]
    public void Of_AllergenWithoutCleanDown_GoesLastOrNotAtAll()
    {
        RunOrderSpec Spec(bool may) => new([Run("s", "SM", 1, 60, 60), Run("w", "WB", 1, 600, 60)], [new("L1")], [new("SM", null, 240) { IsCleanDown = true }])
        {
            Allergens = new Dictionary<string, IReadOnlyList<string>> { ["SM"] = ["soy"] }, MayCleanDown = may,
        };
        Assert.Equal(["s", "w"], CarefulOrder.Of(Spec(true))!.Runs.Select(r => r.Run.Code));
        Assert.Equal(360, CarefulOrder.Of(Spec(true))!.End);
        Assert.Null(CarefulOrder.Of(Spec(false) with { Lines = [new("L1") { LastFlour = "SM" }] }));
    }

    [Fact]
    public void Of_LocksAndPeople_AreKept()
    {
        var spec = new RunOrderSpec([Run("a", "WB", 1, 60, 60), Run("b", "WB", 1, 90, 60) with { Locked = new("L1", 30) }], [new("L1") { Crew = 2 }], []) { Crew = [new(0, 200, 2), new(300, 600, 2)] };
        var plan = CarefulOrder.Of(spec)!;
        Assert.Equal([("b", 30), ("a", 90)], plan.Runs.OrderBy(r => r.Start).Select(r => (r.Run.Code, r.Start)));
        Assert.Empty(RunPlanCheck.Broken(spec, plan));
        Assert.Null(CarefulOrder.Of(spec with { Crew = [new(0, 100, 2)] }));
    }

    [Fact]
    public void Of_DrawnRuns_NeverBreakAnything()
    {
        var dice = new Random(7);
        for (var n = 0; n < 60; n++)
        {
            string[] flours = ["WB", "AP", "SM"];
            var spec = new RunOrderSpec(
                [.. Enumerable.Range(0, 7).Select(i => flours[dice.Next(3)] is var f ? new PackingRun($"r{i}", f, dice.Next(1, 20), dice.Next(0, 2000), dice.Next(2) == 0 ? [new("L1", dice.Next(30, 200))] : [new("L1", dice.Next(30, 200)), new("L2", dice.Next(30, 200))]) { Bin = "F" } : null!)],
                [new("L1"), new("L2") { FreeFrom = 45, LastFlour = "SM" }], [new("SM", null, 120) { IsCleanDown = true }, new(null, null, 20)])
            {
                Allergens = new Dictionary<string, IReadOnlyList<string>> { ["SM"] = ["soy"] }, Bins = [new("F", 20, 500, [new(100, 3000, 5)])], Crew = [new(0, 9000, 1 + (n % 2))],
            };
            Assert.Empty(RunPlanCheck.Broken(spec, CarefulOrder.Of(spec)!));
        }
    }
}
