using Evengrist.Packing.Boards;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Runs;
using Evengrist.Planning.Packing;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>The runs of a mill's orders put in order from its records at a moment. Keeps nothing and starts nothing.</summary>
/// <param name="At">The moment the plan begins.</param>
public sealed record PlanRuns(Instant At)
{
    /// <summary>Longest time the search for the order may take, zero for none: then each run in turn goes where it is done first; finding out whether bins must overflow, and beginning runs early, come on top.</summary>
    public TimeSpan Longest { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>An order that is only supposed, on paper; null for none.</summary>
    public PackingOrder? Supposed { get; init; }

    /// <summary>Whether clean-downs may stand in the plan, whatever the lines' book says; null for what it says.</summary>
    public bool? MayCleanDown { get; init; }

    /// <summary>Puts them in order.</summary>
    /// <returns>What was posed, what came of it, and the plan where there is one.</returns>
    public (PosedRuns Posed, RunOrderOutcome Outcome, PackingPlan? Plan) In(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var asked = HallRecords.Question(mill, At);
        if (Supposed is { } supposed)
        {
            var product = asked.Products.FirstOrDefault(p => p.Code.Equals(supposed.Product, StringComparison.OrdinalIgnoreCase));
            asked = asked with { Orders = [.. asked.Orders, new OrderStanding(supposed, product, product is null ? Quantities.Mass.Zero : supposed.Wanted(product), Quantities.Mass.Zero, Quantities.Mass.Zero, false)] };
        }

        var posed = RunPosing.Of(MayCleanDown is { } may ? asked with { Book = asked.Book with { MayCleanDown = may } } : asked);
        if (posed.Spec.Runs.Count == 0)
        {
            return (posed, new RunOrderRefused(["Nothing is to be packed: no open order has a run. Enter orders, or see why those there are have none."]), null);
        }

        RunOrderOutcome outcome = Longest == TimeSpan.Zero
            ? RunOrderSolver.ByCare(posed.Spec) is { } careful ? careful : new RunOrderNotSolved("No order was found by turns alone: search for one.")
            : RunOrderSolver.Solve(posed.Spec, new RunOrderOptions { Longest = Longest, From = Beginning(posed, asked.Kept) });
        return (posed, outcome, outcome is RunOrderSolved solved ? PackingPlan.Of(posed, solved) : null);
    }

    // From the plan in force: its runs where they are, what is new at the end of its first line.
    private static RunPlan? Beginning(PosedRuns posed, PackingPlan? kept)
    {
        if (kept is null)
        {
            return null;
        }

        var ends = posed.Spec.Lines.ToDictionary(l => l.Code, _ => 0);
        List<RunLock> places = [];
        foreach (var run in posed.Spec.Runs)
        {
            var there = kept.Runs.FirstOrDefault(r => r.Order == run.Code && run.Places.Any(p => p.Line == r.Line));
            var (line, start) = there is null ? (run.Places[0].Line, -1) : (there.Line, Math.Max(0, (int)(there.From - posed.Start).TotalMinutes));
            start = start < 0 ? Math.Max(ends[line], kept.Runs.Where(r => r.Line == line).Select(r => (int)(r.Until - posed.Start).TotalMinutes).DefaultIfEmpty().Max()) : start;
            ends[line] = Math.Max(ends[line], start + run.Places.First(p => p.Line == line).Minutes);
            places.Add(new RunLock(line, start));
        }

        return RunPlan.Of(posed.Spec, places);
    }
}
