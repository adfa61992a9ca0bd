using System.Runtime.InteropServices;

namespace Evengrist.Planning.Solving;

/// <summary>Least Σ cost·x with lower ≤ x ≤ upper for every column and lower ≤ Σ a·x ≤ upper for every row; some columns may have to be whole.</summary>
/// <remarks>Units are the caller's. Columns and rows are numbered in the order they were added; names serve messages and exported files.</remarks>
public sealed class LinearProblem
{
    private readonly List<LinearColumn> columns = [];
    private readonly List<LinearRow> rows = [];
    private readonly List<LinearTerm> terms = [];

    /// <summary>The columns, in order.</summary>
    public IReadOnlyList<LinearColumn> Columns => columns;

    /// <summary>The rows, in order.</summary>
    public IReadOnlyList<LinearRow> Rows => rows;

    /// <summary>The coefficients, in the order they were put; a pair of row and column stands at most once.</summary>
    internal IReadOnlyList<LinearTerm> Terms => terms;

    /// <summary>Whether any column has to be whole.</summary>
    public bool HasWhole => columns.Exists(c => c.IsWhole);

    internal ReadOnlySpan<LinearTerm> TermSpan => CollectionsMarshal.AsSpan(terms);

    /// <summary>Adds a column and gives its number.</summary>
    /// <param name="name">A name of its own.</param>
    /// <param name="lower">Least value; may be −∞.</param>
    /// <param name="upper">Greatest value; may be +∞.</param>
    /// <param name="cost">Cost of one.</param>
    /// <param name="whole">Whether it has to be whole.</param>
    /// <exception cref="ArgumentException">A bound or cost is no number, or the bounds cross.</exception>
    public int Column(string name, double lower, double upper, double cost, bool whole = false)
    {
        Check(name, lower, upper);
        if (!double.IsFinite(cost))
        {
            throw new ArgumentException($"The cost of {name} is {cost}: a finite number is needed.", nameof(cost));
        }

        columns.Add(new LinearColumn(name, lower, upper, cost, whole));
        return columns.Count - 1;
    }

    /// <summary>Adds a row and gives its number.</summary>
    /// <param name="name">A name of its own.</param>
    /// <param name="lower">Least value; may be −∞.</param>
    /// <param name="upper">Greatest value; may be +∞.</param>
    /// <exception cref="ArgumentException">A bound is no number, or the bounds cross.</exception>
    public int Row(string name, double lower, double upper)
    {
        Check(name, lower, upper);
        rows.Add(new LinearRow(name, lower, upper));
        return rows.Count - 1;
    }

    /// <summary>Puts a coefficient; zero is left out.</summary>
    /// <exception cref="ArgumentException">The coefficient is no finite number, or row or column do not exist.</exception>
    public void Put(int row, int column, double coefficient)
    {
        if (!double.IsFinite(coefficient) || (uint)row >= (uint)rows.Count || (uint)column >= (uint)columns.Count)
        {
            throw new ArgumentException($"Coefficient {coefficient} of row {row}, column {column} cannot be put.", nameof(coefficient));
        }

        if (coefficient != 0)
        {
            terms.Add(new LinearTerm(row, column, coefficient));
        }
    }

    /// <summary>Changes the bounds of a column.</summary>
    public void Bound(int column, double lower, double upper)
    {
        Check(columns[column].Name, lower, upper);
        columns[column] = columns[column] with { Lower = lower, Upper = upper };
    }

    /// <summary>Changes the bounds of a row.</summary>
    public void BoundRow(int row, double lower, double upper)
    {
        Check(rows[row].Name, lower, upper);
        rows[row] = rows[row] with { Lower = lower, Upper = upper };
    }

    /// <summary>Changes the cost of a column.</summary>
    public void Price(int column, double cost) => columns[column] = columns[column] with { Cost = cost };

    /// <summary>Σ cost·x.</summary>
    public double CostOf(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        var cost = 0.0;
        for (var c = 0; c < columns.Count; c++)
        {
            cost += columns[c].Cost * values[c];
        }

        return cost;
    }

    private static void Check(string name, double lower, double upper)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (double.IsNaN(lower) || double.IsNaN(upper) || lower > upper || lower == double.PositiveInfinity || upper == double.NegativeInfinity)
        {
            throw new ArgumentException($"{name} cannot lie between {lower} and {upper}.", nameof(name));
        }
    }
}
