using Evengrist.Milling.Suggesting;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Milling;

/// <summary>The best small set of moves as a linear problem with whole numbers: a column of 0 or 1 for each single move, its effect the one it has alone beside the set in the middle.</summary>
internal sealed class SuggestProblem
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    private readonly SuggestMill mill;
    private readonly double[] middleValues;
    private readonly double[][] effects;
    private readonly int[] middle;

    /// <summary>Finds what each move does beside a set.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="middle">Numbers of the moves of the set; empty for the mill as it is.</param>
    /// <param name="stop">Stops it; moves not looked at until then are not chosen.</param>
    public SuggestProblem(SuggestMill mill, int[] middle, CancellationToken stop)
    {
        (this.mill, this.middle) = (mill, middle);
        middleValues = mill.At(Moves(mill, middle)) ?? [.. mill.Rows.Select(r => r.Now)];
        effects = new double[mill.Choice.Count][];
        foreach (var m in middle)
        {
            // What the set loses without it; the others of its lever are counted against that.
            effects[m] = Minus(middleValues, mill.At(Moves(mill, [.. middle.Where(o => o != m)])) ?? middleValues);
        }

        for (var c = 0; c < effects.Length; c++)
        {
            if (effects[c] is null)
            {
                int[] others = [.. middle.Where(o => mill.Choice[o].Lever != mill.Choice[c].Lever)];
                var own = middle.FirstOrDefault(o => mill.Choice[o].Lever == mill.Choice[c].Lever, -1);
                var at = stop.IsCancellationRequested ? null : mill.At(Moves(mill, [.. others, c]));
                effects[c] = at is null ? [] : own < 0 ? Minus(at, middleValues) : [.. Minus(at, middleValues).Zip(effects[own], (gain, lost) => gain + lost)];
            }
        }
    }

    /// <summary>Moves by their numbers.</summary>
    public static Move[] Moves(SuggestMill mill, IReadOnlyList<int> numbers) => [.. numbers.Select(n => mill.Choice[n])];

    /// <summary>The best set by these effects; null where none keeps the bounds.</summary>
    /// <param name="aim">What is asked of it.</param>
    /// <param name="margins">By row: how far within its bounds it has to lie.</param>
    /// <param name="tried">Sets looked at already.</param>
    /// <param name="found">Sets found, of which another set may not have every lever.</param>
    /// <param name="within">Most moves in which it may differ from the set in the middle; null for any.</param>
    /// <param name="stop">Stops it.</param>
    public int[]? Best(SuggestAim aim, double[] margins, IReadOnlyCollection<int[]> tried, IReadOnlyList<int[]> found, int? within, CancellationToken stop)
    {
        var (problem, rows) = (new LinearProblem(), mill.Rows);
        var start = rows.Select((_, r) => middleValues[r] - middle.Sum(m => effects[m][r])).ToArray();
        var scale = rows.Select((_, r) => Math.Max(1e-9, effects.Where(e => e.Length > 0).Select(e => Math.Abs(e[r])).DefaultIfEmpty(0).Max())).ToArray();
        var sign = mill.Spec.Wish.Sign;
        var usable = Enumerable.Range(0, effects.Length).Where(c => effects[c].Length > 0).ToArray();
        var columns = usable.ToDictionary(c => c, c => problem.Column($"move {c}", 0, 1, aim switch
        {
            SuggestAim.Fewest => mill.Choice[c].Effort,
            SuggestAim.Furthest => (-sign * effects[c][0] / scale[0]) + 1e-6,
            _ => 1e-4,
        }, whole: true));
        Row("moves", usable, _ => 1, double.NegativeInfinity, mill.Spec.Rules.Most);
        foreach (var lever in usable.GroupBy(c => mill.Choice[c].Lever).Where(g => g.Count() > 1))
        {
            Row($"lever {lever.Key}", lever, _ => 1, double.NegativeInfinity, 1);
        }

        for (var r = aim is SuggestAim.Furthest or SuggestAim.LeastBroken ? 1 : 0; r < rows.Count; r++)
        {
            Bound(r);
        }

        foreach (var (n, set) in tried.Index())
        {
            Row($"tried {n}", usable, c => set.Contains(c) ? 1 : -1, double.NegativeInfinity, set.Length - 1);
        }

        foreach (var (n, set) in found.Index())
        {
            Row($"found {n}", usable.Where(c => set.Any(s => mill.Choice[s].Lever == mill.Choice[c].Lever)), _ => 1, double.NegativeInfinity, set.Length - 1);
        }

        if (within is { } most)
        {
            Row("near", usable, c => middle.Contains(c) ? -1 : 1, double.NegativeInfinity, most - middle.Length);
        }

        var answer = LinearSolver.Solve(problem, new SolveOptions { Longest = Longest, RelativeGap = 1e-9 }, stop);
        return answer.HasValues ? [.. usable.Where(c => answer.Values[columns[c]] > 0.5)] : null;

        void Row(string name, IEnumerable<int> of, Func<int, double> coefficient, double least, double upper)
        {
            var row = problem.Row(name, least, upper);
            foreach (var c in of)
            {
                problem.Put(row, columns[c], coefficient(c));
            }
        }

        // A bound that no few moves can reach is left out.
        void Bound(int r)
        {
            var (least, upper) = ((rows[r].Least + margins[r] - start[r]) / scale[r], (rows[r].Most - margins[r] - start[r]) / scale[r]);
            double[] by = [.. usable.Select(c => effects[c][r] / scale[r])];
            var count = Math.Min(mill.Spec.Rules.Most, by.Length);
            if (by.Order().Take(count).Where(b => b < 0).Sum() >= least && by.OrderDescending().Take(count).Where(b => b > 0).Sum() <= upper)
            {
                return;
            }

            var broken = aim is SuggestAim.LeastBroken ? problem.Column($"broken {r}", 0, 1e4, 1) : -1;
            foreach (var (side, limit) in ((int, double)[])[(1, least), (-1, -upper)])
            {
                if (!double.IsInfinity(limit))
                {
                    var row = problem.Row($"row {r} {side}", limit, double.PositiveInfinity);
                    foreach (var (i, c) in usable.Index())
                    {
                        problem.Put(row, columns[c], side * by[i]);
                    }

                    if (broken >= 0)
                    {
                        problem.Put(row, broken, 1);
                    }
                }
            }
        }
    }

    private static double[] Minus(double[] one, double[] other) => [.. one.Zip(other, (a, b) => a - b)];
}

/// <summary>What is asked of a set of moves.</summary>
internal enum SuggestAim
{
    /// <summary>The fewest and smallest moves that do what is wished and keep the bounds.</summary>
    Fewest,

    /// <summary>As far as the bounds allow.</summary>
    Furthest,

    /// <summary>The bounds missed by the least.</summary>
    LeastBroken,
}
