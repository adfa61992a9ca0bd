using Evengrist.Milling.Suggesting;
using MathNet.Numerics.Distributions;

namespace Evengrist.Planning.Milling;

/// <summary>Sets of moves one after another: chosen by what each move does alone, solved anew exactly, chosen again by what each does beside that set, until nothing better comes.</summary>
internal sealed class SuggestSearch(SuggestMill mill, CancellationToken stop)
{
    private const int Rounds = 8;
    private const int Tightenings = 3;

    private readonly SuggestProblem now = new(mill, [], stop);
    private readonly List<int[]> found = [];

    /// <summary>The best set with other levers than those found so far; null where none keeps the bounds.</summary>
    public SuggestedSet? Next(SuggestAim aim)
    {
        var margins = new double[mill.Rows.Count];
        SuggestedSet? best = null;
        int[]? chosen = null;
        for (var n = 0; n < Tightenings; n++)
        {
            if (Search(aim, margins) is not { } set)
            {
                break;
            }

            var solved = SuggestedSet.Of(mill, SuggestProblem.Moves(mill, set));
            if (best is null || !best.IsSure(mill.Spec.Sure))
            {
                (best, chosen) = (solved, set);
            }

            if (mill.Spec.Sure is not { } sure || solved.IsSure(sure))
            {
                break;
            }

            Tighten(margins, solved, aim, Normal.InvCDF(0, 1, sure));
        }

        // Where a chance is asked for, a set that has it in the mean alone is no answer while another aim is left.
        if (best is null || (aim is SuggestAim.Fewest && !best.IsSure(mill.Spec.Sure)))
        {
            return null;
        }

        found.Add(chosen!);
        return best;
    }

    private static void Tighten(double[] margins, SuggestedSet solved, SuggestAim aim, double z)
    {
        foreach (var (i, met) in solved.Keeps.Prepend(solved.Wish).Index().Skip(aim is SuggestAim.Fewest ? 0 : 1))
        {
            margins[i] = Math.Max(margins[i], 1.05 * z * Unsure(met));
        }
    }

    private static double Unsure(BoundMet met) => met.Row.IsOfChange ? met.Uncertainty ?? 0 : 0;

    private int[]? Search(SuggestAim aim, double[] margins)
    {
        List<int[]> tried = [];
        var (problem, within) = (now, (int?)null);
        int[]? best = null;
        var merit = Merit.Worst;
        for (var round = 0; round < Rounds && !stop.IsCancellationRequested; round++)
        {
            if (problem.Best(aim, margins, tried, found, within, stop) is not { Length: > 0 } next)
            {
                break;
            }

            tried.Add(next);
            var reached = Reached(aim, margins, next);
            if (reached.IsBetterThan(merit))
            {
                (best, merit, problem) = (next, reached, new SuggestProblem(mill, next, stop));
            }
            else
            {
                within = 2;
            }

            if (aim is SuggestAim.Fewest && merit.Broken == 0 && round > 1)
            {
                break;
            }
        }

        return merit.Broken == 0 || aim is SuggestAim.LeastBroken ? best : null;
    }

    private Merit Reached(SuggestAim aim, double[] margins, int[] set)
    {
        if (mill.At(SuggestProblem.Moves(mill, set)) is not { } values)
        {
            return Merit.Worst;
        }

        var broken = 0.0;
        for (var r = aim is SuggestAim.Fewest ? 0 : 1; r < values.Length; r++)
        {
            var row = mill.Rows[r];
            var beyond = Math.Max(row.Least + margins[r] - values[r], values[r] - row.Most + margins[r]) / Math.Max(1e-3, Math.Abs(row.Now));
            broken += beyond > 1e-7 ? beyond : 0;
        }

        return new Merit(broken, aim is SuggestAim.Furthest ? -mill.Spec.Wish.Sign * (values[0] - mill.Rows[0].Now) : set.Sum(c => mill.Choice[c].Effort));
    }

    private readonly record struct Merit(double Broken, double Cost)
    {
        public static Merit Worst { get; } = new(double.PositiveInfinity, double.PositiveInfinity);

        public bool IsBetterThan(Merit other) => Broken < other.Broken || (Broken == other.Broken && Cost < other.Cost - 1e-9);
    }
}
