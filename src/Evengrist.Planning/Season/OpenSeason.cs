using System.Diagnostics;
using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>A season kept open: what has changed only in its numbers (a truck more, another demand, another price) is solved again from where the last answer stood.</summary>
/// <remarks>For one thread. A change of shape (a wheat, an offer, a choice more) is solved from the start. Model: docs/model/season.md.</remarks>
public sealed class OpenSeason : IDisposable
{
    private const int Rounds = 12;
    private readonly SeasonOptions options;
    private SeasonModel? model;
    private LinearSolver? solver;
    private HashSet<int> later = [];

    /// <summary>Nothing is solved yet.</summary>
    public OpenSeason(SeasonOptions? options = null) => this.options = options ?? new SeasonOptions();

    /// <summary>The problem as it was last solved.</summary>
    internal SeasonModel? Model => model;

    /// <summary>The answer behind the last outcome.</summary>
    internal LinearAnswer? LastAnswer { get; private set; }

    /// <summary>The last outcome; null before the first.</summary>
    public SeasonOutcome? Last { get; private set; }

    /// <summary>The linear plan of a season: the least any plan can cost, with what everything scarce is worth. Most gates, least shares and campaigns are not kept.</summary>
    public SeasonOutcome Solve(SeasonSpec spec, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return Last = Outcome(spec, stop);
    }

    /// <inheritdoc/>
    public void Dispose() => solver?.Dispose();

    private SeasonOutcome Outcome(SeasonSpec spec, CancellationToken stop)
    {
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new SeasonBadInput(faults);
        }

        var began = Stopwatch.GetTimestamp();
        var (answer, off) = Answer(spec, stop);
        LastAnswer = answer;
        if (answer.Exit == ExitReason.Infeasible)
        {
            return SeasonClash.Find(model!);
        }

        return !answer.HasValues ? SeasonFailure.Of(answer.Exit, model!) : SeasonFailure.Checked(SeasonReading.Plan(model!, answer, answer.Bound, millable: false) with
        {
            Took = Stopwatch.GetElapsedTime(began), LayerDifference = off, Duals = SeasonDualsReading.Of(model!, answer),
        });
    }

    /// <summary>Solves; with layers, solves again with the quality that the last answer draws, until that settles or the passes are used up.</summary>
    internal (LinearAnswer Answer, double LayerDifference) Answer(SeasonSpec spec, CancellationToken stop)
    {
        var draws = LayerDraws.First(spec);
        for (var pass = 0; ; pass++)
        {
            Take(SeasonBuild.Of(spec, draws));
            var answer = Priced(stop);
            if (!answer.HasValues || !draws.AnyLayers)
            {
                return (answer, 0);
            }

            var drawn = SeasonReading.Drawn(model!, answer.Values);
            var next = draws.Of(drawn);
            var off = draws.DifferenceTo(next, drawn);
            if (off <= options.LayerTolerance || pass >= options.LayerPasses)
            {
                return (answer, off);
            }

            draws = pass < 2 ? next : next.Halfway(draws);
        }
    }

    // Columns left for later are held at 0. What each would save is reckoned from the duals; those that would save are opened and it is solved again: the
    // answer is the whole problem's, for no column outside it would make it cheaper.
    private LinearAnswer Priced(CancellationToken stop)
    {
        for (var round = 0; ; round++)
        {
            var answer = solver!.Solve(new SolveOptions(), stop);
            if (answer.Exit is ExitReason.Cancelled or ExitReason.TimeReached || later.Count == 0)
            {
                return answer;
            }

            var costs = answer.RowDuals.Count > 0 ? ReducedCosts(model!.Problem, answer.RowDuals) : null;
            int[] open = [.. later.Where(c => costs is null || round >= Rounds || costs[c] < -1e-7 * Math.Max(1, Math.Abs(model!.Problem.Columns[c].Cost)))];
            if (open.Length == 0)
            {
                return answer with { ReducedCosts = costs! };
            }

            foreach (var c in open)
            {
                later.Remove(c);
                solver.Bound(c, model!.Problem.Columns[c].Lower, model.Problem.Columns[c].Upper);
            }
        }
    }

    private void Start(LinearProblem problem)
    {
        solver?.Dispose();
        solver = new LinearSolver(problem, asItStands: true);
        foreach (var c in later)
        {
            solver.Bound(c, 0, 0);
        }
    }

    private static double[] ReducedCosts(LinearProblem problem, IReadOnlyList<double> duals)
    {
        double[] costs = [.. problem.Columns.Select(c => c.Cost)];
        foreach (var term in problem.TermSpan)
        {
            costs[term.Column] -= duals[term.Row] * term.Coefficient;
        }

        return costs;
    }

    private void Take(SeasonModel next)
    {
        if (model is not null && SameShape(model.Problem, next.Problem))
        {
            Change(model.Problem, next.Problem);
        }
        else
        {
            later = next.Spec.Periods.Count >= CoarseSeason.Worthwhile ? [.. CoarseSeason.Later(next)] : [];
            Start(next.Problem);
        }

        model = next;
    }

    private static bool SameShape(LinearProblem a, LinearProblem b)
    {
        if (a.Columns.Count != b.Columns.Count || a.Rows.Count != b.Rows.Count || a.Terms.Count != b.Terms.Count)
        {
            return false;
        }

        for (var i = 0; i < a.Terms.Count; i++)
        {
            if (a.Terms[i].Row != b.Terms[i].Row || a.Terms[i].Column != b.Terms[i].Column)
            {
                return false;
            }
        }

        return true;
    }

    private void Change(LinearProblem from, LinearProblem to)
    {
        for (var c = 0; c < to.Columns.Count; c++)
        {
            if (!later.Contains(c) && (from.Columns[c].Lower != to.Columns[c].Lower || from.Columns[c].Upper != to.Columns[c].Upper))
            {
                solver!.Bound(c, to.Columns[c].Lower, to.Columns[c].Upper);
            }

            if (from.Columns[c].Cost != to.Columns[c].Cost)
            {
                solver!.Price(c, to.Columns[c].Cost);
            }
        }

        for (var r = 0; r < to.Rows.Count; r++)
        {
            if (from.Rows[r].Lower != to.Rows[r].Lower || from.Rows[r].Upper != to.Rows[r].Upper)
            {
                solver!.BoundRow(r, to.Rows[r].Lower, to.Rows[r].Upper);
            }
        }

        for (var i = 0; i < to.Terms.Count; i++)
        {
            if (from.Terms[i].Coefficient != to.Terms[i].Coefficient)
            {
                solver!.Put(to.Terms[i].Row, to.Terms[i].Column, to.Terms[i].Coefficient);
            }
        }
    }
}
