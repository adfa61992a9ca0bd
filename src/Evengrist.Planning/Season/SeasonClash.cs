using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>Which demands clash, and what would have to yield.</summary>
/// <remarks>
/// Least total yielding first; what yields is then held and the rest solved again until nothing can be kept: those held contain a clash, and what is not
/// needed for it is dropped one by one. What is left is a smallest set: dropping any one of them lets the rest be kept.
/// </remarks>
internal static class SeasonClash
{
    private const double Little = 1e-6;

    public static SeasonOutcome Find(SeasonModel infeasible)
    {
        var model = SeasonBuild.Of(infeasible.Spec, infeasible.Draws, soft: true);
        using var solver = new LinearSolver(model.Problem);
        var first = solver.Solve(new SolveOptions());
        if (!first.HasValues)
        {
            return new SeasonFailed(SeasonReading.ExitOf(first.Exit), "The limits clash, and the solver could not tell which ones.");
        }

        string[] ways = [.. model.Hard.Select(d => (Demand: d, By: d.Slack.Sum(c => first.Values[c]))).Where(d => d.By > Little)
            .Select(d => FormattableString.Invariant($"{d.Demand.Words}: short by {d.By:0.##}{(d.Demand.Slack.Count > 1 ? " over all periods" : "")}"))];
        var held = new List<HardDemand>();
        for (var answer = first; answer.HasValues; answer = solver.Solve(new SolveOptions()))
        {
            var yields = model.Hard.Except(held).Where(d => d.Slack.Any(c => answer.Values[c] > Little)).ToList();
            if (yields.Count == 0)
            {
                return new SeasonFailed(SeasonExit.SolverFailed, "The solver found no plan, then found that one exists: plan again.");
            }

            yields.ForEach(d => Hold(solver, d, true));
            held.AddRange(yields);
        }

        foreach (var demand in held.ToList())
        {
            Hold(solver, demand, false);
            if (solver.Solve(new SolveOptions()).HasValues)
            {
                Hold(solver, demand, true);
            }
            else
            {
                held.Remove(demand);
            }
        }

        return new SeasonInfeasible([.. held.Select(d => d.Words)], ways);
    }

    private static void Hold(LinearSolver solver, HardDemand demand, bool hold) => demand.Slack.ForEach(c => solver.Bound(c, 0, hold ? 0 : 1e9));
}
