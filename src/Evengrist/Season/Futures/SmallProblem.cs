namespace Evengrist.Season.Futures;

/// <summary>A small linear problem, solved to the exact vertex by the simplex method with bounds on a dense table: a mix of one flour takes a few microseconds.</summary>
/// <remarks>
/// Minimise Σ c·x under A·x = b ≥ 0, 0 ≤ x ≤ u. The caller puts one column with a single 1 into each row first, so that a start stands; what those columns
/// cost says how much it hurts to leave a row open. Largest reduced cost first; after many steps the lowest number first (Bland), which cannot turn in circles.
/// </remarks>
internal sealed class SmallProblem(int rows, int columns)
{
    private const double Small = 1e-9;
    private readonly double[] table = new double[rows * columns];
    private readonly double[] cost = new double[columns];
    private readonly double[] most = new double[columns];
    private readonly double[] right = new double[rows];
    private readonly int[] basis = new int[rows];
    private readonly bool[] isBasic = new bool[columns];
    private readonly bool[] atMost = new bool[columns];
    private int used;

    public int Columns => used;

    public double[] Values { get; } = new double[columns];

    public void Clear()
    {
        Array.Clear(table);
        Array.Clear(isBasic);
        Array.Clear(atMost);
        used = 0;
    }

    /// <summary>Adds a column; the first ones are the start, one for each row in turn.</summary>
    public int Column(double price, double upTo)
    {
        (cost[used], most[used]) = (price, upTo);
        return used++;
    }

    public void Put(int row, int column, double by) => table[(row * columns) + column] = by;

    public void Right(int row, double value) => right[row] = value;

    /// <summary>Solves; false where it did not end, which has not been seen.</summary>
    public bool Solve()
    {
        for (var i = 0; i < rows; i++)
        {
            (basis[i], isBasic[i]) = (i, true);
        }

        Span<double> reduced = stackalloc double[used];
        for (var j = 0; j < used; j++)
        {
            reduced[j] = cost[j];
            for (var i = 0; i < rows; i++)
            {
                reduced[j] -= cost[i] * table[(i * columns) + j];
            }
        }

        for (var step = 0; step < 2000; step++)
        {
            var enters = Entering(reduced, lowest: step > 200);
            if (enters < 0)
            {
                Read();
                return true;
            }

            Step(enters, reduced);
        }

        Read();
        return false;
    }

    private int Entering(Span<double> reduced, bool lowest)
    {
        var (best, gain) = (-1, Small * 1000);
        for (var j = 0; j < used; j++)
        {
            var by = isBasic[j] || most[j] <= 0 ? 0 : atMost[j] ? reduced[j] : -reduced[j];
            if (by > gain)
            {
                (best, gain) = (j, by);
                if (lowest)
                {
                    break;
                }
            }
        }

        return best;
    }

    private void Step(int enters, Span<double> reduced)
    {
        var way = atMost[enters] ? -1 : 1;
        var (length, leaves, toMost) = (most[enters], -1, false);
        for (var i = 0; i < rows; i++)
        {
            var slope = table[(i * columns) + enters] * way;
            if (slope > Small)
            {
                var reach = Math.Max(0, right[i]) / slope;
                if (reach < length || (reach <= length && leaves >= 0 && basis[i] < basis[leaves]))
                {
                    (length, leaves, toMost) = (reach, i, false);
                }
            }
            else if (slope < -Small && most[basis[i]] < double.PositiveInfinity)
            {
                var reach = Math.Max(0, most[basis[i]] - right[i]) / -slope;
                if (reach < length || (reach <= length && leaves >= 0 && basis[i] < basis[leaves]))
                {
                    (length, leaves, toMost) = (reach, i, true);
                }
            }
        }

        for (var i = 0; i < rows; i++)
        {
            right[i] -= table[(i * columns) + enters] * way * length;
        }

        if (leaves < 0)
        {
            atMost[enters] = !atMost[enters];
            return;
        }

        var value = (atMost[enters] ? most[enters] : 0) + (way * length);
        var leaving = basis[leaves];
        (isBasic[leaving], atMost[leaving]) = (false, toMost);
        (isBasic[enters], atMost[enters], basis[leaves]) = (true, false, enters);
        right[leaves] = value;
        Pivot(leaves, enters, reduced);
    }

    private void Pivot(int row, int column, Span<double> reduced)
    {
        var own = table.AsSpan(row * columns, used);
        var by = 1 / own[column];
        for (var j = 0; j < used; j++)
        {
            own[j] *= by;
        }

        for (var i = 0; i < rows; i++)
        {
            var factor = i == row ? 0 : table[(i * columns) + column];
            if (factor != 0)
            {
                var other = table.AsSpan(i * columns, used);
                for (var j = 0; j < used; j++)
                {
                    other[j] -= factor * own[j];
                }
            }
        }

        var price = reduced[column];
        for (var j = 0; j < used; j++)
        {
            reduced[j] -= price * own[j];
        }
    }

    private void Read()
    {
        for (var j = 0; j < used; j++)
        {
            Values[j] = atMost[j] ? most[j] : 0;
        }

        for (var i = 0; i < rows; i++)
        {
            Values[basis[i]] = Math.Max(0, right[i]);
        }
    }
}
