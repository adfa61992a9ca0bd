using System.Numerics;

namespace Evengrist.Planning.Solving;

/// <summary>A small linear problem kept as a full tableau and solved by the dual simplex: rows and bounds may change between solves, and a copy costs next to nothing.</summary>
/// <remarks>
/// For some tens of columns, all of them bounded, and rows alike. With every column bounded, any basis that has each column at its cheaper bound is dual feasible,
/// so that there is no first phase and infeasible means infeasible. Basic variables are Σ tableau · nonbasic ones: rows are auxiliary variables with bounds.
/// Larger problems go to <see cref="LinearSolver"/>.
/// </remarks>
internal sealed class DenseSimplex
{
    private const double Feasible = 1e-10;
    private const double Pivot = 1e-9;
    private const int PlainPivots = 400;
    private const int MostPivots = 5000;

    private readonly int columns;
    private readonly List<double> lower;
    private readonly List<double> upper;
    private readonly int stride;
    private readonly double[] reduced;
    private readonly int[] nonbasic;
    private readonly bool[] atUpper;
    private readonly List<int> basic;
    private double[] tableau;
    private double[] held = [];

    /// <param name="costs">Cost of each column.</param>
    /// <param name="lower">Least of each column; finite.</param>
    /// <param name="upper">Most of each column; finite.</param>
    public DenseSimplex(double[] costs, double[] lower, double[] upper)
    {
        columns = costs.Length;
        (this.lower, this.upper) = ([.. lower], [.. upper]);
        stride = (columns + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        (tableau, basic) = (new double[16 * stride], []);
        (reduced, nonbasic) = ([.. costs, .. new double[stride - columns]], [.. Enumerable.Range(0, columns)]);
        atUpper = [.. costs.Select(c => c < 0)];
    }

    private DenseSimplex(DenseSimplex from)
    {
        (columns, stride) = (from.columns, from.stride);
        (lower, upper) = ([.. from.lower], [.. from.upper]);
        (tableau, basic) = (from.tableau.AsSpan(0, from.basic.Count * stride).ToArray(), [.. from.basic]);
        (reduced, nonbasic, atUpper) = ((double[])from.reduced.Clone(), (int[])from.nonbasic.Clone(), (bool[])from.atUpper.Clone());
    }

    /// <summary>Σ cost · x.</summary>
    public double Cost { get; private set; }

    /// <summary>A copy that changes by itself.</summary>
    public DenseSimplex Copy() => new(this);

    /// <summary>Adds lower ≤ Σ a·x ≤ upper.</summary>
    public void Row(double[] coefficients, double least, double most)
    {
        var row = new double[columns];
        for (var q = 0; q < columns; q++)
        {
            if (nonbasic[q] < columns)
            {
                row[q] += coefficients[nonbasic[q]];
            }
        }

        for (var i = 0; i < basic.Count; i++)
        {
            if (basic[i] < columns && coefficients[basic[i]] is var a && a != 0)
            {
                for (var q = 0; q < columns; q++)
                {
                    row[q] += a * tableau[(i * stride) + q];
                }
            }
        }

        if (tableau.Length < (basic.Count + 1) * stride)
        {
            Array.Resize(ref tableau, 2 * (basic.Count + 1) * stride);
        }

        row.CopyTo(tableau, basic.Count * stride);
        basic.Add(columns + basic.Count);
        lower.Add(least);
        upper.Add(most);
    }

    /// <summary>Changes the bounds of a column.</summary>
    public void Bound(int column, double least, double most) => (lower[column], upper[column]) = (least, most);

    /// <summary>The cost that one more unit of a column, away from the bound it is at, adds; 0 for a column between its bounds.</summary>
    public double[] ReducedCosts()
    {
        var costs = new double[columns];
        for (var q = 0; q < columns; q++)
        {
            if (nonbasic[q] < columns)
            {
                costs[nonbasic[q]] = reduced[q];
            }
        }

        return costs;
    }

    /// <summary>What the first unit costs at least by which a column between its bounds is moved up or down; +∞ where it cannot be, 0 for a column at a bound.</summary>
    public double CostToMove(int column, bool up)
    {
        var row = basic.IndexOf(column);
        if (row < 0)
        {
            return 0;
        }

        var enters = Entering(tableau.AsSpan(row * stride, columns), up, first: false);
        return enters < 0 ? double.PositiveInfinity : Math.Abs(reduced[enters] / tableau[(row * stride) + enters]);
    }

    /// <summary>The columns' values after a solve.</summary>
    public double[] Values()
    {
        var values = new double[columns];
        for (var q = 0; q < columns; q++)
        {
            if (nonbasic[q] < columns)
            {
                values[nonbasic[q]] = At(q);
            }
        }

        for (var i = 0; i < basic.Count; i++)
        {
            if (basic[i] < columns)
            {
                values[basic[i]] = held[i];
            }
        }

        return values;
    }

    /// <summary>Solves it as it stands; infeasible also where it is sure to cost more than <paramref name="atMost"/>.</summary>
    public ExitReason Solve(double atMost = double.PositiveInfinity)
    {
        for (var c = 0; c < columns; c++)
        {
            if (lower[c] > upper[c] + Feasible)
            {
                return ExitReason.Infeasible;
            }
        }

        Hold();
        for (var pivots = 0; pivots < MostPivots; pivots++)
        {
            if (Cost > atMost)
            {
                return ExitReason.Infeasible;
            }

            var (leaves, rises) = Leaving(pivots > PlainPivots);
            if (leaves < 0)
            {
                return ExitReason.Optimal;
            }

            var enters = Entering(tableau.AsSpan(leaves * stride, columns), rises, pivots > PlainPivots);
            if (enters < 0)
            {
                return ExitReason.Infeasible;
            }

            Exchange(leaves, enters, rises);
            if (pivots % 50 == 49)
            {
                Hold();
            }
        }

        return ExitReason.SolverFailed;
    }

    // Values of the basic variables and the cost, from those at their bounds.
    private void Hold()
    {
        held = held.Length >= basic.Count ? held : new double[basic.Count];
        Cost = 0;
        var at = new double[columns];
        for (var q = 0; q < columns; q++)
        {
            at[q] = At(q);
            Cost += reduced[q] * at[q];
        }

        for (var i = 0; i < basic.Count; i++)
        {
            var sum = 0.0;
            for (var q = 0; q < columns; q++)
            {
                sum += tableau[(i * stride) + q] * at[q];
            }

            held[i] = sum;
        }
    }

    private double At(int q) => atUpper[q] ? upper[nonbasic[q]] : lower[nonbasic[q]];

    // The basic variable furthest outside its bounds; the first of them once it has gone on for long, which cannot go in circles.
    private (int Row, bool Rises) Leaving(bool first)
    {
        var (row, rises, most) = (-1, false, Feasible);
        for (var i = 0; i < basic.Count; i++)
        {
            var value = held[i];
            var (below, above) = (lower[basic[i]] - value, value - upper[basic[i]]);
            if (Math.Max(below, above) > most && (!first || row < 0 || basic[i] < basic[row]))
            {
                (row, rises) = (i, below > above);
                most = first ? Feasible : Math.Max(below, above);
            }
        }

        return (row, rises);
    }

    // The nonbasic variable that can push the row back at the least loss of cost; of alike ones the one with the larger element.
    private int Entering(ReadOnlySpan<double> row, bool rises, bool first)
    {
        var (enters, least, size) = (-1, double.PositiveInfinity, 0.0);
        for (var q = 0; q < columns; q++)
        {
            var push = rises == atUpper[q] ? -row[q] : row[q];
            if (push <= Pivot || upper[nonbasic[q]] - lower[nonbasic[q]] <= 0)
            {
                continue;
            }

            var ratio = Math.Max(0, atUpper[q] ? -reduced[q] : reduced[q]) / push;
            var better = ratio < least - 1e-12 || (ratio <= least + 1e-12 && (first ? nonbasic[q] < nonbasic[enters] : push > size));
            if (better)
            {
                (enters, least, size) = (q, Math.Min(ratio, least), push);
            }
        }

        return enters;
    }

    private void Exchange(int leaves, int enters, bool rises)
    {
        var row = tableau.AsSpan(leaves * stride, stride);
        var pivot = row[enters];
        var to = rises ? lower[basic[leaves]] : upper[basic[leaves]];
        var (from, move) = (At(enters), (to - held[leaves]) / pivot);
        for (var i = 0; i < basic.Count; i++)
        {
            held[i] += tableau[(i * stride) + enters] * move;
        }

        Cost += reduced[enters] * move;
        held[leaves] = from + move;
        for (var q = 0; q < row.Length; q++)
        {
            row[q] = q == enters ? 1 / pivot : -row[q] / pivot;
        }

        for (var i = 0; i < basic.Count; i++)
        {
            if (i != leaves)
            {
                Change(tableau.AsSpan(i * stride, stride), row, enters);
            }
        }

        Change(reduced, row, enters);
        (basic[leaves], nonbasic[enters]) = (nonbasic[enters], basic[leaves]);
        atUpper[enters] = !rises;
    }

    private static void Change(Span<double> into, ReadOnlySpan<double> row, int enters)
    {
        var by = into[enters];
        if (by == 0)
        {
            return;
        }

        into[enters] = 0;
        for (var q = 0; q < into.Length; q += Vector<double>.Count)
        {
            (new Vector<double>(into[q..]) + (by * new Vector<double>(row[q..]))).CopyTo(into[q..]);
        }
    }
}
