using Evengrist.Milling.Learning;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Evengrist.Milling.Drift;

/// <summary>All tests as one linear problem round the tuned mill: what tuning finds, how far the model lies off in each figure the same at every test, and the drifts taken in so far. A further drift is judged without solving it anew.</summary>
/// <remarks>With Λ = P⁻¹ + HᵀR⁻¹H and a drift's column u: s = uᵀR⁻¹(y − Hẑ), I = uᵀR⁻¹u − uᵀR⁻¹HΛ⁻¹HᵀR⁻¹u; with a prior of spread σ its amount is s/(I + σ⁻²) ± (I + σ⁻²)^−½, and the odds for it are (1 + σ²I)^−½ · exp(½ s²/(I + σ⁻²)).</remarks>
internal sealed class DriftEquations
{
    private const double OwnWeight = 4; // how many tests the usual spread counts for against a figure's own [ours]
    private readonly IReadOnlyList<DriftRow> rows;
    private readonly Vector<double> weights;
    private readonly Vector<double> pull;
    private readonly List<Vector<double>> columns = [];
    private readonly Dictionary<string, int> offsets;
    private Matrix<double> prior;
    private Matrix<double> weighted;
    private Cholesky<double> information;

    public DriftEquations(IReadOnlyList<DriftRow> rows, MillTuning tuning)
    {
        this.rows = rows;
        DriftRow[][] figures = [.. rows.GroupBy(r => r.What, StringComparer.Ordinal).Select(g => g.ToArray())];
        var (keys, count) = (tuning.Values.Count, tuning.Values.Count + figures.Length);
        offsets = figures.Select((f, i) => (f[0].What, At: keys + i)).ToDictionary(x => x.What, x => x.At, StringComparer.Ordinal);
        Spread = figures.ToDictionary(f => f[0].What, Own, StringComparer.Ordinal);
        for (var k = 0; k < keys; k++)
        {
            var key = k;
            columns.Add(Vector<double>.Build.Dense(rows.Count, i => rows[i].ByKey[key]));
        }

        columns.AddRange(figures.Select(f => Vector<double>.Build.Dense(rows.Count, i => rows[i].What == f[0].What ? 1 : 0)));
        weights = Vector<double>.Build.Dense(rows.Count, i => Math.Pow(Spread[rows[i].What], -2));
        prior = Matrix<double>.Build.Dense(count, count);
        var before = tuning.Prior.Inverse();
        prior.SetSubMatrix(0, 0, before);
        foreach (var figure in figures)
        {
            var at = offsets[figure[0].What];
            prior[at, at] = Math.Pow(Math.Max(figure.Average(r => r.Shortfall), 1e-3 * Spread[figure[0].What]), -2);
        }

        pull = Vector<double>.Build.Dense(count);
        pull.SetSubVector(0, keys, -(before * tuning.Values));
        (weighted, information) = Solve();
    }

    /// <summary>Own spread of each figure from test to test: its successive differences and the usual error of measuring.</summary>
    public IReadOnlyDictionary<string, double> Spread { get; }

    /// <summary>What is found: keys as they differ from the tuned ones, offsets of figures, amounts of drifts taken.</summary>
    public Vector<double> Found { get; private set; } = null!;

    private Vector<double> Left { get; set; } = null!;

    /// <summary>Which unknown is the offset of a figure; null where it was never measured.</summary>
    public int? OffsetOf(string what) => offsets.TryGetValue(what, out var at) ? at : null;

    /// <summary>Judges a further drift.</summary>
    /// <param name="column">What one unit of it does to each figure.</param>
    /// <param name="spread">Its spread before data.</param>
    /// <param name="sign">1 or −1 where it can only be that way, 0 for either.</param>
    public (double LogOdds, double Amount) Try(Vector<double> column, double spread, int sign)
    {
        var weightedColumn = column.PointwiseMultiply(weights);
        var shared = weighted * column;
        var told = (weightedColumn * column) - (shared * information.Solve(shared));
        var (score, precision) = (weightedColumn * Left, told + Math.Pow(spread, -2));
        var (amount, error) = (score / precision, Math.Pow(precision, -0.5));
        var oneSided = sign == 0 ? 0 : Math.Log(Math.Max(1e-300, 2 * Normal.CDF(0, 1, sign * amount / error)));
        return ((-0.5 * Math.Log(1 + (spread * spread * Math.Max(told, 0)))) + (0.5 * score * score / precision) + oneSided, amount);
    }

    /// <summary>Takes a drift in.</summary>
    public void Take(Vector<double> column, double spread)
    {
        columns.Add(column);
        prior = prior.DiagonalStack(Matrix<double>.Build.Dense(1, 1, Math.Pow(spread, -2)));
        (weighted, information) = Solve();
    }

    /// <summary>How much of what one unit of a drift does to a linear figure of the unknowns the rest would take up.</summary>
    /// <param name="gradient">By unknown.</param>
    /// <param name="column">What one unit of a drift does to each figure.</param>
    public double TakenBack(Vector<double> gradient, Vector<double> column) => gradient * information.Solve(weighted * column);

    /// <summary>Variance of a linear figure of the unknowns.</summary>
    public double Variance(Vector<double> gradient) => gradient * information.Solve(gradient);

    /// <summary>A row as the mill has it without the drifts taken last.</summary>
    public double Without(int row, int drifts) => rows[row].Modelled + Enumerable.Range(0, columns.Count - drifts).Sum(c => columns[c][row] * Found[c]);

    private (Matrix<double>, Cholesky<double>) Solve()
    {
        var all = Matrix<double>.Build.DenseOfColumnVectors(columns);
        var scaled = all.TransposeThisAndMultiply(Matrix<double>.Build.DiagonalOfDiagonalVector(weights));
        var solved = (prior + (scaled * all)).Cholesky();
        var off = Vector<double>.Build.Dense(rows.Count, i => rows[i].Measured - rows[i].Modelled);
        var right = scaled * off;
        for (var i = 0; i < pull.Count; i++)
        {
            right[i] += pull[i];
        }

        Found = solved.Solve(right);
        Left = off - (all * Found);
        return (scaled, solved);
    }

    // The median of successive differences does not mind one jump: σ = median / 0.954 [Montgomery's control charts, for the moving range of two; from memory].
    private static double Own(DriftRow[] of)
    {
        var usual = Math.Sqrt(of.Average(r => r.Sigma * r.Sigma));
        if (of.Length < 4)
        {
            return usual;
        }

        double[] steps = [.. of.Zip(of.Skip(1), (a, b) => Math.Abs(b.Measured - b.Modelled - (a.Measured - a.Modelled))).Order()];
        var median = (steps[steps.Length / 2] + steps[(steps.Length - 1) / 2]) / 2;
        return Math.Sqrt(((OwnWeight * usual * usual) + (steps.Length * Math.Pow(median / 0.954, 2))) / (OwnWeight + steps.Length));
    }
}
