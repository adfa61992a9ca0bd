using Evengrist.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>Finds the shares of least cost: what is linear, with tangents added where the last answer misses a chance limit, until it misses none; then gates in steps.</summary>
/// <remarks>Tangents are found first with gates that move freely, and kept when gates go in steps: every one of them holds there too. Large engines stand beside, for comparison.</remarks>
internal sealed class MixSearch(MixSpec spec, MixSearchOptions options)
{
    private const double Miss = 1e-9;

    // What an engine lets pass as kept: once tangents no longer halve a miss below it, the answer is as good as the engine has it.
    private const double Let = 1e-7;
    private const int MostRounds = 200;
    private readonly Cone[] cones = [.. Cones.Of(spec).Select(c => c.Cone)];

    /// <summary>The best mix.</summary>
    /// <param name="gates">Whether steps, number and least opening of gates are kept; gates move freely otherwise.</param>
    /// <param name="known">Shares of a mix that keeps everything, to be beaten; null without one.</param>
    /// <param name="stop">Stops it.</param>
    public Found Best(bool gates, double[]? known = null, CancellationToken stop = default) =>
        Find(gates, [.. spec.Bins.Select(b => spec.ByYear ? b.YearCostPerTonne : b.CostPerTonne)], null, stop, known);

    /// <summary>Whether any mix keeps everything.</summary>
    public bool IsPossible(CancellationToken stop = default) => Find(true, Any(), null, stop).IsThere;

    /// <summary>The mix that misses least, each miss relative to the size of its end; ends whose cost is not a number are kept.</summary>
    public Found Nearest(double[] slack, CancellationToken stop = default) => Find(true, new double[spec.Bins.Count], slack, stop);

    /// <summary>The ends, in order.</summary>
    public IReadOnlyList<Cone> Ends => cones;

    // Costs that tell all bins apart, where only the limits matter: ties would keep the search going round.
    private double[] Any() => [.. Enumerable.Range(0, spec.Bins.Count).Select(j => 1 + (j / 97.0))];

    private Found Find(bool gates, double[] costs, double[]? slack, CancellationToken stop, double[]? known = null)
    {
        return options.Engine is null ? FindHere(gates, costs, slack, known, stop) : FindBy(gates, costs, slack, stop);
    }

    private Found FindHere(bool gates, double[] costs, double[]? slack, double[]? known, CancellationToken stop)
    {
        if (stop.IsCancellationRequested)
        {
            return Found.None(ExitReason.Cancelled);
        }

        var frame = new GateFrame(spec, cones, costs, slack, gates);
        var (exit, values) = frame.IsCrossed ? (ExitReason.Infeasible, []) : Tightening.Of(frame);
        if (exit != ExitReason.Optimal || !frame.HasGates)
        {
            return values.Length == 0 ? Found.None(exit) : new Found(exit, frame.SharesOf(values), frame.Tableau.Cost, 0);
        }

        // The search starts from a tableau without the tangents that only led there.
        var lean = new GateFrame(spec, cones, costs, slack, gates);
        lean.AddTight(frame, frame.SharesOf(values));
        var search = new GateSearch(lean, options, stop);
        if (known is not null)
        {
            search.Begin(known);
        }

        var best = search.Find();
        return best.Values.Length == 0 ? Found.None(best.Exit) : new Found(best.Exit, lean.SharesOf(best.Values), best.Cost, best.Gap);
    }

    private Found FindBy(bool gates, double[] costs, double[]? slack, CancellationToken stop)
    {
        var free = new MixProblem(spec, cones, gates: false);
        if (free.IsCrossed)
        {
            return Found.None(ExitReason.Infeasible);
        }

        var found = Tighten(free, costs, slack, stop);
        if (!gates || !found.IsThere)
        {
            return found;
        }

        var stepped = new MixProblem(spec, cones, gates: true);
        if (stepped.IsCrossed)
        {
            return Found.None(ExitReason.Infeasible);
        }

        if (!stepped.HasGates)
        {
            return found;
        }

        foreach (var (cone, row) in free.Tangents)
        {
            stepped.Add(cone, row);
        }

        return Tighten(stepped, costs, slack, stop);
    }

    private Found Tighten(MixProblem problem, double[] costs, double[]? slack, CancellationToken stop)
    {
        var before = double.PositiveInfinity;
        for (var round = 0; round < MostRounds; round++)
        {
            var built = problem.Build(costs, slack);
            var answer = LinearSolver.Solve(built, options.Solving, stop);
            if (answer.Exit == ExitReason.SolverFailed)
            {
                // Tangents that lie close together now and then lead one engine astray; another takes over.
                answer = LinearSolver.Solve(built, options.Solving with { Engine = built.HasWhole ? LinearEngine.Cbc : LinearEngine.Clp }, stop);
            }

            if (!answer.HasValues)
            {
                return Found.None(answer.Exit);
            }

            var shares = problem.SharesOf(answer);
            var missed = 0.0;
            var tangents = new List<(int Cone, double[] Row)>();
            for (var k = 0; k < cones.Length; k++)
            {
                // A slack that was paid for is part of the answer: its end is met with it.
                var paid = slack is not null && !double.IsNaN(slack[k]) ? Paid(answer, k, slack) : 0;
                if (cones[k].HasMargin && -(cones[k].Slack(shares) + paid) is var miss and > Miss)
                {
                    tangents.Add((k, cones[k].Tangent(shares)));
                    missed = Math.Max(missed, miss);
                }
            }

            if (missed <= Miss || (missed <= Let && missed > before / 2))
            {
                return new Found(answer.Exit, shares, answer.Cost, answer.Exit == ExitReason.Optimal ? 0 : answer.Gap);
            }

            before = missed;
            foreach (var (cone, row) in tangents)
            {
                problem.Add(cone, row);
            }
        }

        return Found.None(ExitReason.SolverFailed);
    }

    // The columns of the misses are the last ones, for those ends that have one.
    private static double Paid(LinearAnswer answer, int end, double[] slack)
    {
        var before = slack.Take(end).Count(s => !double.IsNaN(s));
        var all = slack.Count(s => !double.IsNaN(s));
        return answer.Values[answer.Values.Count - all + before];
    }
}
