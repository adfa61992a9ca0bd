using System.Diagnostics;
using System.Globalization;
using Evengrist.Packing.Runs;
using Google.OrTools.Sat;

namespace Evengrist.Planning.Packing;

/// <summary>Puts packing runs in order over lines at the least cost of lateness, changing over and flour run through. Page: docs/model/run-order.md.</summary>
public static class RunOrderSolver
{
    // Of the time, what goes to a plan that keeps every bin from overflowing [ours].
    private const double KeepingBins = 0.6;

    private static readonly TimeSpan ForSettling = TimeSpan.FromSeconds(1);

    /// <summary>The plan that costs least, or why there is none.</summary>
    public static RunOrderOutcome Solve(RunOrderSpec spec, RunOrderOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(spec);
        options ??= new RunOrderOptions();
        if (RunOrderFaults.Of(spec) is { Count: > 0 } faults)
        {
            return new RunOrderRefused(faults);
        }

        var began = Stopwatch.GetTimestamp();
        var from = CarefulOrder.Of(spec, options.From) ?? options.From ?? PlainOrder.EarliestDue(spec);
        var (outcome, isImpossible) = Within(spec, from, spec.Bins.Count > 0 ? options.Longest * KeepingBins : options.Longest, mayOverflow: false);
        if (outcome is not RunOrderSolved && spec.Bins.Count > 0)
        {
            var isSettled = isImpossible;
            (outcome, isImpossible) = Within(spec, from, options.Longest - Min(Stopwatch.GetElapsedTime(began), options.Longest * KeepingBins), mayOverflow: true);
            outcome = !isImpossible && outcome is not RunOrderSolved && RunPlanCheck.Broken(spec, from).Count == 0 ? Careful(spec, from, "Time ran out before the search found anything: this is the order a careful person would make, and a better one may well be there.") : outcome;
            outcome = outcome is RunOrderSolved found && !isSettled ? found with { Said = $"{found.Said} Whether another order keeps every bin from overflowing was not settled in time." } : outcome;
        }

        return outcome switch
        {
            RunOrderSolved solved => solved with { Took = Stopwatch.GetElapsedTime(began) },
            _ when isImpossible => new RunOrderClash(RunOrderClashes.Of(spec, s => IsImpossible(s, options))),
            _ => outcome,
        };
    }

    private static TimeSpan Min(TimeSpan a, TimeSpan b) => a < b ? a : b;

    private static (RunOrderOutcome Outcome, bool IsImpossible) Within(RunOrderSpec spec, RunPlan from, TimeSpan longest, bool mayOverflow)
    {
        var model = new RunOrderModel(spec);
        model.Bins(mayOverflow);
        model.Begin(from);
        var solver = Solver(longest);
        var status = solver.Solve(model.Model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return (new RunOrderNotSolved(status == CpSolverStatus.Unknown ? "Time ran out before a plan was found: give it longer, or lock fewer runs." : $"The solver gave up: {status}."), status == CpSolverStatus.Infeasible);
        }

        var plan = RunPlan.Of(spec, Settled(model, solver));
        return RunPlanCheck.Broken(spec, plan) is { Count: > 0 } broken
            ? (new RunOrderNotSolved($"The solver's plan did not pass the check and is not shown: {string.Join(" ", broken)}"), false)
            : (Solved(spec, plan, solver, status), false);
    }

    // Whether there is no order at all: the first one found will do.
    private static bool IsImpossible(RunOrderSpec spec, RunOrderOptions options)
    {
        if (CarefulOrder.Of(spec, options.From) is not null)
        {
            return false;
        }

        var model = new RunOrderModel(spec);
        model.Bins(mayOverflow: true);
        model.Begin(options.From ?? PlainOrder.EarliestDue(spec));
        var solver = Solver(options.Longest);
        solver.StringParameters += ",stop_after_first_solution:true";
        return solver.Solve(model.Model) == CpSolverStatus.Infeasible;
    }

    /// <summary>The order a careful person would make, without any search; null where none is found so.</summary>
    public static RunOrderSolved? ByCare(RunOrderSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return RunOrderFaults.Of(spec).Count == 0 && CarefulOrder.Of(spec) is { } plan && RunPlanCheck.Broken(spec, plan).Count == 0 ? Careful(spec, plan, "Each run in turn where it is done first; nothing was searched, and a better order may well be there.") : null;
    }

    private static RunOrderSolved Careful(RunOrderSpec spec, RunPlan plan, string said) => new(plan, false, 0, said, TimeSpan.Zero, Choked(spec, plan));

    private static (string Bin, int Minute)[] Choked(RunOrderSpec spec, RunPlan plan) => [.. spec.Bins.Select(b => (b.Code, Minute: RunPlanCheck.Choked(plan, b))).Where(b => b.Minute is not null).Select(b => (b.Code, b.Minute!.Value))];

    private static RunOrderSolved Solved(RunOrderSpec spec, RunPlan plan, CpSolver solver, CpSolverStatus status)
    {
        var proven = status == CpSolverStatus.Optimal;
        var bound = RunOrderModel.Money(solver.BestObjectiveBound);
        var said = proven ? "Proven: no order costs less." : string.Create(CultureInfo.InvariantCulture, $"Time ran out: the plan holds; no order costs less than {bound:0.00}.");
        return new(plan, proven, bound, said, TimeSpan.Zero, Choked(spec, plan));
    }

    // The least cost leaves room: runs begin as early as the order allows.
    private static IReadOnlyList<RunLock> Settled(RunOrderModel model, CpSolver found)
    {
        var places = model.Read(found);
        model.Settle(found);
        var solver = Solver(ForSettling);
        return solver.Solve(model.Model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? model.Read(solver) : places;
    }

    // One thread that takes turns between ways to search: the same answer every time.
    private static CpSolver Solver(TimeSpan longest) => new()
    {
        StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:8,interleave_search:true,random_seed:1,max_time_in_seconds:{longest.TotalSeconds}"),
    };
}
