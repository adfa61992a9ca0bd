using Evengrist.Packing.Boards;

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
    DateTimeOffset Start, IReadOnlyList<HallRunAnswer> Runs, PlanFigures Figures, PlanFigures FirstCome, PlanFigures EarliestDue, bool IsProven, double GapPercent, string Exit, double SolverSeconds,
    IReadOnlyList<FullBinAnswer> Full, IReadOnlyList<LeftOut> LeftOut, string Note)
{
    /// <summary>A plan in plain values.</summary>
    public static HallPlanAnswer Of(PackingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(
            plan.Start.ToDateTimeOffset(), [.. plan.Runs.Select(HallRunAnswer.Of)], plan.Figures, plan.FirstCome, plan.EarliestDue, plan.IsProven, plan.GapPercent, plan.Said, plan.SolverSeconds,
            [.. plan.Full.Select(f => new FullBinAnswer(f.Bin, f.At.ToDateTimeOffset()))], plan.LeftOut, PackingPlanAnswer.Said);
    }
}

/// <summary>A run in its place; its mass net, kg.</summary>
public sealed record HallRunAnswer(
    string Order, string Product, string Line, DateTimeOffset From, DateTimeOffset Until, decimal Kilograms, DateTimeOffset Due, int LateMinutes, string Bin, int ChangeMinutes, double FlushTonnes, string FlushTo, IReadOnlyList<string> ToSign, bool IsLocked)
{
    internal static HallRunAnswer Of(PlannedRun run) => new(
        run.Order, run.Product, run.Line, run.From.ToDateTimeOffset(), run.Until.ToDateTimeOffset(), run.Grams / 1000m, run.Due.ToDateTimeOffset(), run.LateMinutes, run.Bin, run.ChangeMinutes, run.FlushTonnes, run.FlushTo, run.ToSign, run.IsLocked);
}

/// <summary>A bin that would be full, and when.</summary>
public sealed record FullBinAnswer(string Bin, DateTimeOffset At);
