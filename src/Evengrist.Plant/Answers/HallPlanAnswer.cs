using Evengrist.Packing.Boards;
using NodaTime;

namespace Evengrist.Plant.Answers;

/// <summary>Packing runs of the records in order, in plain values; times as moments.</summary>
/// <param name="Start">The moment the plan begins.</param>
/// <param name="Runs">Each run, by line and start.</param>
/// <param name="Figures">What it comes to.</param>
/// <param name="FirstCome">The order in which orders were taken, beside it.</param>
/// <param name="EarliestDue">The order of due times, beside it.</param>
/// <param name="IsProven">Whether no order costs less.</param>
/// <param name="GapPercent">By how much of its cost a better one may cost less; 0 where proven.</param>
/// <param name="Exit">Why the solver stopped.</param>
/// <param name="SolverSeconds">Time taken.</param>
/// <param name="Full">Bins that would be full, and when.</param>
/// <param name="LeftOut">Orders with no run, and why.</param>
/// <param name="Note">What it is, and is not.</param>
public sealed record HallPlanAnswer(
    Instant Start, IReadOnlyList<PlannedRun> Runs, PlanFigures Figures, PlanFigures FirstCome, PlanFigures EarliestDue, bool IsProven, double GapPercent, string Exit, double SolverSeconds,
    IReadOnlyList<FullBin> Full, IReadOnlyList<LeftOut> LeftOut, string Note)
{
    /// <summary>A plan in plain values.</summary>
    public static HallPlanAnswer Of(PackingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan.Start, plan.Runs, plan.Figures, plan.FirstCome, plan.EarliestDue, plan.IsProven, plan.GapPercent, plan.Said, plan.SolverSeconds, plan.Full, plan.LeftOut, PackingPlanAnswer.Said);
    }
}
