using Evengrist.Packing.Runs;

namespace Evengrist.Packing.Boards;

/// <summary>What an order of runs comes to.</summary>
/// <param name="Cost">Its cost, in money of the mill's choice.</param>
/// <param name="Hours">From its start to the end of the last run, hours.</param>
/// <param name="LateMinutes">Minutes late, all runs together, unweighted.</param>
/// <param name="LateRuns">How many runs are late.</param>
/// <param name="ChangeMinutes">Minutes of changing over, all lines together.</param>
/// <param name="FlushTonnes">Flour run through, tonnes.</param>
/// <param name="Breaks">What it does not keep, each a sentence; empty where it keeps all.</param>
public sealed record PlanFigures(double Cost, double Hours, int LateMinutes, int LateRuns, int ChangeMinutes, double FlushTonnes, IReadOnlyList<string> Breaks)
{
    /// <summary>Those of a plan.</summary>
    public static PlanFigures Of(RunOrderSpec spec, RunPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(Math.Round(plan.Cost, 2), Math.Round(plan.End / 60.0, 2), plan.Late, plan.Runs.Count(r => r.Late > 0), plan.ChangeMinutes, Math.Round(plan.FlushTonnes, 3), RunPlanCheck.Broken(spec, plan));
    }
}
