using System.Diagnostics;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>Branch and bound over gates in whole steps, open or shut: the part of all mixes with the lowest bound is looked at next.</summary>
/// <remarks>
/// A part's bound is the cost of what is linear in it, solved from the tableau of the part it was cut from, with tangents of its own. A bin whose reduced cost says that one more step of it costs more than the best mix
/// found is held there. Mixes are found by rounding each part's answer up and down and looking which of them keep every end.
/// </remarks>
internal sealed class GateSearch(GateFrame frame, MixSearchOptions options, CancellationToken stop)
{
    private const double Whole = 1e-7;
    private const double Kept = 1e-9;
    private const double Loose = 1e-6;
    private const int LooseRounds = 6;
    private const int MostRounds = 200;
    private const int MostRounded = 7;
    private const int MostDepth = 24;
    private const int MostTableaus = 4096;

    private readonly PriorityQueue<GateNode, double> waiting = new();
    private double[] best = [];
    private double bestCost = double.PositiveInfinity;
    private double leastLeft = double.PositiveInfinity;
    private int looked;

    /// <summary>Takes a mix that is known already as the one to beat; one that does not keep everything is passed over.</summary>
    public void Begin(double[] shares)
    {
        var values = shares.Select(s => s / frame.Unit).ToArray();
        Round(values);
        if (frame.Missing.Length == 0 && frame.Keeps(frame.Root, values))
        {
            Take(values, frame.CostOf(values));
        }
    }

    /// <summary>The best mix of all.</summary>
    public (ExitReason Exit, double[] Values, double Cost, double Gap) Find()
    {
        var began = Stopwatch.GetTimestamp();
        waiting.Enqueue(frame.Root, double.NegativeInfinity);
        while (waiting.TryDequeue(out var node, out var bound))
        {
            if (bound > Enough)
            {
                leastLeft = Math.Min(leastLeft, bound);
                break;
            }

            if (stop.IsCancellationRequested || (looked & 63) == 63 && Stopwatch.GetElapsedTime(began) > options.Longest)
            {
                leastLeft = Math.Min(leastLeft, bound);
                return Done(stop.IsCancellationRequested ? ExitReason.Cancelled : ExitReason.TimeReached);
            }

            looked++;
            Look(node);
        }

        return best.Length == 0 ? (ExitReason.Infeasible, [], double.NaN, double.PositiveInfinity) : Done(ExitReason.Optimal);
    }

    // A part is given up where it can save less than the gap allowed.
    private double Enough => bestCost - (options.RelativeGap * Math.Max(1e-6, Math.Abs(bestCost)));

    private (ExitReason Exit, double[] Values, double Cost, double Gap) Done(ExitReason exit)
    {
        var gap = best.Length == 0 ? double.PositiveInfinity : leastLeft >= bestCost ? 0 : (bestCost - leastLeft) / Math.Max(1e-6, Math.Abs(bestCost));
        return (exit == ExitReason.Optimal && gap > 1e-9 ? ExitReason.GapReached : exit, best, best.Length == 0 ? double.NaN : bestCost, gap);
    }

    private void Look(GateNode node)
    {
        var tableau = (node.From ?? frame.Tableau).Copy();
        for (var j = 0; j < frame.Bins; j++)
        {
            tableau.Bound(j, node.Least[j], node.Most[j]);
        }

        DenseSimplex? bare = null;
        for (var round = 0; ; round++)
        {
            var exit = tableau.Solve(bestCost);
            if (exit != ExitReason.Optimal)
            {
                // What numbers could not settle is not given up in silence: it counts as left, at the lowest bound there is.
                leastLeft = exit == ExitReason.SolverFailed ? double.NegativeInfinity : leastLeft;
                return;
            }

            if (tableau.Cost > Enough)
            {
                leastLeft = Math.Min(leastLeft, tableau.Cost);
                return;
            }

            var values = tableau.Values();
            var branch = Branch(node, values, tableau);
            if (branch.Length == 0)
            {
                Round(values);
            }

            // Tangents of a part serve it alone: carried on to the others they would slow all of them.
            bare ??= frame.HasMargins ? tableau.Copy() : tableau;
            var missed = frame.Cut(tableau, values, branch.Length == 0 ? Kept : Loose);
            if (missed > 0 && round < (branch.Length == 0 ? MostRounds : LooseRounds))
            {
                continue;
            }

            if (branch.Length == 0 && node.From is not null && frame.Missing.Length == 0 && !frame.Keeps(frame.Root, values))
            {
                // What numbers have lost on the way here decides nothing.
                Look(node with { From = null, Depth = 0 });
                return;
            }

            if (branch.Length == 0)
            {
                Take(values, tableau.Cost);
                return;
            }

            TryRounded(node, values);
            Hold(node, tableau, values);
            var (from, depth) = node.Depth < MostDepth && waiting.Count < MostTableaus ? (bare, node.Depth + 1) : (null, 0);
            foreach (var (part, more) in Branch(node, values, tableau))
            {
                if (tableau.Cost + more > Enough)
                {
                    leastLeft = Math.Min(leastLeft, tableau.Cost + more);
                }
                else
                {
                    waiting.Enqueue(part with { From = from, Depth = depth }, tableau.Cost + more);
                }
            }

            return;
        }
    }

    private void Round(double[] values)
    {
        for (var j = 0; frame.IsStepped && j < frame.Bins; j++)
        {
            values[j] = Math.Round(values[j]);
        }
    }

    private void Take(double[] values, double cost)
    {
        if (cost < bestCost)
        {
            (best, bestCost) = (values, cost);
        }
    }

    // Open gates first, then whole steps, where both ways cost most; none where the part's answer is a mix. With each part, what it costs more at least.
    private (GateNode Part, double More)[] Branch(GateNode node, double[] values, DenseSimplex tableau)
    {
        var (open, loose, half, widest, split, worst) = (0, 0, -1, -1, -1, -1.0);
        for (var j = 0; j < frame.Bins; j++)
        {
            if (node.Open[j])
            {
                open++;
            }
            else if (values[j] > Whole)
            {
                loose++;
                widest = widest < 0 || values[j] > values[widest] ? j : widest;
                half = values[j] < frame.LeastOpen[j] - Whole && (half < 0 || values[j] > values[half]) ? j : half;
            }

            if (frame.IsStepped && Fraction(values[j]) > Whole)
            {
                var (below, above) = Beside(tableau, j, values[j]);
                var both = Math.Max(below, 1e-6) * Math.Max(above, 1e-6);
                (split, worst) = both > worst ? (j, both) : (split, worst);
            }
        }

        var pick = half >= 0 ? half : open + loose > frame.MostOpen ? widest : -1;
        if (pick >= 0)
        {
            var least = Math.Max(frame.LeastOpen[pick], frame.IsStepped ? 1 : 0);
            return open >= frame.MostOpen ? [(node.Shut(pick), 0)] : [(node.Shut(pick), 0), (node.Opened(pick, least), 0)];
        }

        if (split < 0)
        {
            return [];
        }

        var (down, up) = Beside(tableau, split, values[split]);
        return [(node.Between(split, node.Least[split], Math.Floor(values[split])), down), (node.Between(split, Math.Ceiling(values[split]), node.Most[split]), up)];
    }

    // What it costs at least to bring a bin down or up to a whole step: the first pivot of the dual simplex tells.
    private static (double Down, double Up) Beside(DenseSimplex tableau, int j, double value) =>
        (tableau.CostToMove(j, up: false) * (value - Math.Floor(value)), tableau.CostToMove(j, up: true) * (Math.Ceiling(value) - value));

    private static double Fraction(double value) => Math.Abs(value - Math.Round(value));

    // A bin at a bound whose further steps cost more than the best mix saves is held near it; the node's own bounds serve all its parts.
    private void Hold(GateNode node, DenseSimplex tableau, double[] values)
    {
        if (!frame.IsStepped || double.IsInfinity(bestCost))
        {
            return;
        }

        var (reduced, room) = (tableau.ReducedCosts(), bestCost - tableau.Cost);
        for (var j = 0; j < frame.Bins; j++)
        {
            if (reduced[j] > 1e-12 && values[j] <= node.Least[j] + Whole)
            {
                node.Most[j] = Math.Min(node.Most[j], node.Least[j] + Math.Floor((room / reduced[j]) + Whole));
            }
            else if (reduced[j] < -1e-12 && values[j] >= node.Most[j] - Whole)
            {
                node.Least[j] = Math.Max(node.Least[j], node.Most[j] - Math.Floor((room / -reduced[j]) + Whole));
            }
        }
    }

    // Every way of rounding the bins between two steps that sums to the whole; the cheapest that keeps all is taken.
    private void TryRounded(GateNode node, double[] values)
    {
        var between = Enumerable.Range(0, frame.Bins).Where(j => Fraction(values[j]) > Whole).ToArray();
        if (!frame.IsStepped || frame.Missing.Length > 0 || between.Length is 0 or > MostRounded)
        {
            return;
        }

        var floor = new double[frame.Bins];
        for (var j = 0; j < frame.Bins; j++)
        {
            floor[j] = Fraction(values[j]) > Whole ? Math.Floor(values[j]) : Math.Round(values[j]);
        }

        var (ups, least) = ((int)Math.Round((1 / frame.Unit) - floor.Sum()), frame.CostOf(floor));
        var more = between.Select(frame.CostOfOne).ToArray();
        for (var bits = 0; bits < 1 << between.Length; bits++)
        {
            if (System.Numerics.BitOperations.PopCount((uint)bits) != ups)
            {
                continue;
            }

            var cost = least;
            for (var b = 0; b < between.Length; b++)
            {
                cost += ((bits >> b) & 1) * more[b];
            }

            if (cost >= Enough)
            {
                continue;
            }

            var tried = (double[])floor.Clone();
            for (var b = 0; b < between.Length; b++)
            {
                tried[between[b]] += (bits >> b) & 1;
            }

            if (frame.Keeps(node, tried))
            {
                Take(tried, cost);
            }
        }
    }
}
