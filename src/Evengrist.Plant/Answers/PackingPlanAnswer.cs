using Evengrist.Packing.Runs;

namespace Evengrist.Plant.Answers;

/// <summary>Packing runs in order, in plain values; times in minutes from the start of the plan.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="IsProven">Whether no order costs less.</param>
/// <param name="GapPercent">By how much of its cost a better one may cost less; 0 where proven.</param>
/// <param name="Exit">Why the solver stopped.</param>
/// <param name="SolverSeconds">Time taken.</param>
/// <param name="ToSign">What a named person has to check and sign before the run begins.</param>
/// <param name="Flushed">Where flour that is run through goes.</param>
/// <param name="Choked">Bins that overflow with all the mill makes.</param>
/// <param name="FirstCome">The order in which runs were asked for, beside it.</param>
/// <param name="EarliestDue">The order of due times, beside it.</param>
/// <param name="Note">What it is, and is not.</param>
public sealed record PackingPlanAnswer(
    RunPlanAnswer Plan, bool IsProven, double GapPercent, string Exit, double SolverSeconds, IReadOnlyList<string> ToSign, IReadOnlyList<FlushAnswer> Flushed, IReadOnlyList<string> Choked,
    RunPlanAnswer FirstCome, RunPlanAnswer EarliestDue, string Note)
{
    /// <summary>What is said with every answer.</summary>
    public const string Said = "A decision aid: it starts no line. A named person checks that a line is clean after an allergen and signs; the site's own allergen plan holds, and no plan makes a product safe.";

    /// <summary>An outcome in plain values.</summary>
    public static Reply<PackingPlanAnswer> Of(RunOrderOutcome outcome, RunOrderSpec spec) => outcome switch
    {
        RunOrderSolved solved => new(Of(solved, spec), []),
        RunOrderClash { Clash.Count: > 0 } clash => new(null, [$"No order keeps all of it. These cannot be kept together: {string.Join(" ", clash.Clash)} Give way in one of them."]),
        RunOrderClash => new(null, ["No order keeps what the lines and rules ask, and leaving out locks, bins, crews and allergens does not help: look at which line can pack what."]),
        RunOrderRefused refused => new(null, refused.Faults),
        RunOrderNotSolved not => new(null, [not.Said]),
        _ => throw new InvalidOperationException($"An order ended as {outcome?.GetType().Name}."),
    };

    private static PackingPlanAnswer Of(RunOrderSolved solved, RunOrderSpec spec) => new(
        RunPlanAnswer.Of(solved.Plan, []), solved.IsProven, 100 * solved.Gap, solved.Said, Math.Round(solved.Took.TotalSeconds, 3),
        [.. solved.Plan.ToSign.Select(r => $"Before {r.Run.Code} on {r.Line}, minute {r.Start}: clean-down for {string.Join(", ", r.Before.Allergens)}.")],
        [.. solved.Plan.Flushed.Select(f => new FlushAnswer(f.To, f.Tonnes))], [.. solved.Choked.Select(c => $"Bin {c.Bin} is full at minute {c.Minute}: the mill would choke.")],
        Beside(PlainOrder.FirstCome(spec), spec), Beside(PlainOrder.EarliestDue(spec), spec), Said);

    private static RunPlanAnswer Beside(RunPlan plan, RunOrderSpec spec) => RunPlanAnswer.Of(plan, RunPlanCheck.Broken(spec, plan));
}

/// <summary>Runs in their places.</summary>
/// <param name="Cost">What they cost, in money of the case.</param>
/// <param name="End">When the last ends.</param>
/// <param name="LateMinutes">Minutes late, all together.</param>
/// <param name="ChangeMinutes">Minutes of changing over, all together.</param>
/// <param name="FlushTonnes">Flour run through.</param>
/// <param name="Runs">Each run, by line and start.</param>
/// <param name="Breaks">What this order does not keep; empty where it keeps all.</param>
public sealed record RunPlanAnswer(double Cost, int End, int LateMinutes, int ChangeMinutes, double FlushTonnes, IReadOnlyList<PlacedRunAnswer> Runs, IReadOnlyList<string> Breaks)
{
    internal static RunPlanAnswer Of(RunPlan plan, IReadOnlyList<string> breaks) => new(
        Math.Round(plan.Cost, 2), plan.End, plan.Late, plan.ChangeMinutes, plan.FlushTonnes,
        [.. plan.Runs.Select(r => new PlacedRunAnswer(r.Run.Code, r.Run.Flour, r.Line, r.Before.Minutes, r.Start, r.End, r.Run.Due, r.Late, r.Run.Locked is not null))], breaks);
}

/// <summary>A run in its place.</summary>
public sealed record PlacedRunAnswer(string Run, string Flour, string Line, int ChangeMinutes, int Start, int End, int Due, int LateMinutes, bool IsLocked);

/// <summary>Flour that is run through.</summary>
public sealed record FlushAnswer(string To, double Tonnes);
