using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Numerics.Reconciling;

/// <summary>The constraints as straight lines about some values, and the least correction that keeps them.</summary>
/// <remarks>
/// A x + B u = h, each row over the size of its terms. What no u can reach (the orthogonal complement of B's columns) is what the measurements alone must keep: G e = c with x = y + S e, S the uncertainties. e of least length
/// is the answer; G⁺G is the share of each error that the constraints see.
/// </remarks>
internal sealed class Linearisation
{
    private readonly ReconcileSpec spec;
    private readonly int[] measured;
    private readonly int[] sought;
    private readonly double[] spread;
    private readonly Spectrum reach;
    private readonly Spectrum check;
    private readonly Matrix<double> a;
    private readonly double[] columnSizes;
    private readonly Vector<double> errors;

    private Linearisation(ReconcileSpec spec, double[] about)
    {
        this.spec = spec;
        measured = [.. Enumerable.Range(0, about.Length).Where(i => spec.Unknowns[i].IsMeasured)];
        sought = [.. Enumerable.Range(0, about.Length).Except(measured)];
        spread = [.. measured.Select(i => spec.Unknowns[i].StandardUncertainty!.Value)];
        var rows = spec.Constraints.Count;
        var (slopes, right) = Slopes(spec, about);
        a = Matrix<double>.Build.Dense(rows, Math.Max(1, measured.Length), (r, j) => j < measured.Length ? slopes[r, measured[j]] : 0);
        columnSizes = [.. sought.Select(i => slopes.Column(i).L2Norm() is > 0 and var size ? size : 1)];
        var b = sought.Length == 0 ? null : Matrix<double>.Build.Dense(rows, sought.Length, (r, j) => slopes[r, sought[j]] / columnSizes[j]);
        reach = new Spectrum(b, rows, sought.Length);
        var y = Vector<double>.Build.Dense(a.ColumnCount, j => j < measured.Length ? spec.Unknowns[measured[j]].Value : 0);
        var left = reach.Unreached;
        var g = left is null || measured.Length == 0 ? null : left.TransposeThisAndMultiply(a) * Matrix<double>.Build.DenseOfDiagonalArray(spread);
        check = new Spectrum(g, left?.ColumnCount ?? 0, measured.Length);
        errors = g is null ? Vector<double>.Build.Dense(Math.Max(1, measured.Length)) : check.Input(left!.TransposeThisAndMultiply(right - (a * y)));
        Values = [.. about];
        for (var j = 0; j < measured.Length; j++)
        {
            Values[measured[j]] = y[j] + (spread[j] * errors[j]);
        }

        Find(right, b, about);
    }

    /// <summary>The corrected values.</summary>
    public double[] Values { get; }

    public static Linearisation About(ReconcileSpec spec, double[] values) => new(spec, values);

    public Balanced Outcome(int rounds)
    {
        var shared = check.Felt is { } felt ? felt.TransposeAndMultiply(felt) : Matrix<double>.Build.Dense(Math.Max(1, measured.Length), Math.Max(1, measured.Length));
        var covariance = Covariance(shared);
        var adjusted = new Adjusted[Values.Length];
        foreach (var (j, i) in measured.Index())
        {
            var seen = shared[j, j];
            var isChecked = seen > 1e-12;
            adjusted[i] = new Adjusted(spec.Unknowns[i], Values[i], Math.Sqrt(Math.Max(0, covariance[i, i])), isChecked ? Standing.Redundant : Standing.NotRedundant, isChecked ? -errors[j] / Math.Sqrt(seen) : null);
        }

        foreach (var (j, i) in sought.Index())
        {
            // Found where every input of the direction is felt.
            var isFound = reach.Felt is { } own && own.Row(j) is var row && row.DotProduct(row) > 1 - 1e-9;
            adjusted[i] = new Adjusted(spec.Unknowns[i], Values[i], isFound ? Math.Sqrt(Math.Max(0, covariance[i, i])) : null, isFound ? Standing.Observable : Standing.NotObservable, null);
        }

        return check.Rank > 0 ? new Reconciled(adjusted, covariance, errors.DotProduct(errors), check.Rank, rounds, shared) : new NothingToAdjust(adjusted, covariance, rounds);
    }

    private static (Matrix<double> Slopes, Vector<double> Right) Slopes(ReconcileSpec spec, double[] about)
    {
        var slopes = Matrix<double>.Build.Dense(spec.Constraints.Count, about.Length);
        var right = Vector<double>.Build.Dense(spec.Constraints.Count);
        foreach (var (r, constraint) in spec.Constraints.Index())
        {
            foreach (var term in constraint.Terms)
            {
                slopes[r, term.First] += term.Factor * (term.Second is { } s ? about[s] : 1);
                if (term.Second is { } second)
                {
                    slopes[r, second] += term.Factor * about[term.First];
                }
            }

            var size = Math.Abs(constraint.Constant) + about.Select((v, i) => Math.Abs(slopes[r, i]) * (Math.Abs(v) + (spec.Unknowns[i].StandardUncertainty ?? 0))).Sum();
            right[r] = Enumerable.Range(0, about.Length).Sum(i => slopes[r, i] * about[i]) - constraint.Miss(about);
            if (size > 0)
            {
                slopes.SetRow(r, slopes.Row(r) / size);
                right[r] /= size;
            }
        }

        return (slopes, right);
    }

    // What was not measured, as little from where it stood as the constraints ask.
    private void Find(Vector<double> right, Matrix<double>? b, double[] about)
    {
        if (b is null)
        {
            return;
        }

        var now = Vector<double>.Build.Dense(sought.Length, j => about[sought[j]] * columnSizes[j]);
        var x = Vector<double>.Build.Dense(a.ColumnCount, j => j < measured.Length ? Values[measured[j]] : 0);
        var step = reach.Input(right - (a * x) - (b * now));
        for (var j = 0; j < sought.Length; j++)
        {
            Values[sought[j]] = about[sought[j]] + (step[j] / columnSizes[j]);
        }
    }

    private Matrix<double> Covariance(Matrix<double> shared)
    {
        var all = Matrix<double>.Build.Dense(Values.Length, Values.Length);
        if (measured.Length == 0)
        {
            return all;
        }

        var s = Matrix<double>.Build.DenseOfDiagonalArray(spread);
        var own = s * (Matrix<double>.Build.DenseIdentity(measured.Length) - shared) * s;
        Set(all, own, measured, measured);
        if (sought.Length > 0)
        {
            var follows = -Matrix<double>.Build.DenseOfDiagonalArray([.. columnSizes.Select(c => 1 / c)]) * reach.Inputs(a);
            var mixed = follows * own;
            Set(all, mixed, sought, measured);
            Set(all, mixed.Transpose(), measured, sought);
            Set(all, mixed.TransposeAndMultiply(follows), sought, sought);
        }

        return all;
    }

    private static void Set(Matrix<double> to, Matrix<double> from, int[] rows, int[] columns)
    {
        foreach (var (r, row) in rows.Index())
        {
            foreach (var (c, column) in columns.Index())
            {
                to[row, column] = from[r, c];
            }
        }
    }
}
