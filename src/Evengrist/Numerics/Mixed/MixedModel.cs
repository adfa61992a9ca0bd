using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace Evengrist.Numerics.Mixed;

/// <summary>Fits a linear model with random groups by restricted likelihood (REML), the residual variance profiled out. See docs/model/bake.md.</summary>
public static class MixedModel
{
    private const int MostRounds = 400;
    private const double StopStep = 1e-9;
    private const double Nothing = 1e-20;

    /// <summary>The fit; null where the fixed part is not of full rank or nothing varies.</summary>
    /// <param name="spec">The model.</param>
    /// <exception cref="ArgumentException">The model has faults.</exception>
    public static MixedFit? Fit(MixedSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var y = Vector<double>.Build.DenseOfEnumerable(spec.Values);
        var x = Matrix<double>.Build.DenseOfRows(spec.Fixed);
        Matrix<double>[] shares = [.. spec.Groups.Select(g => Matrix<double>.Build.Dense(g.Count, g.Count, (i, j) => g[i] == g[j] ? 1 : 0))];
        if (x.Rank() < x.ColumnCount)
        {
            return null;
        }

        var best = Search(ratios => Profile(y, x, shares, ratios)?.Criterion ?? double.PositiveInfinity, shares.Length);
        return Profile(y, x, shares, best);
    }

    // For each grouping the variance over the residual one; the residual variance and β follow.
    private static MixedFit? Profile(Vector<double> y, Matrix<double> x, Matrix<double>[] shares, IReadOnlyList<double> ratios)
    {
        var (n, p) = (y.Count, x.ColumnCount);
        var v = Matrix<double>.Build.DenseIdentity(n);
        foreach (var (k, share) in shares.Index())
        {
            v += ratios[k] * share;
        }

        Cholesky<double> root, inner;
        Matrix<double> vx;
        try
        {
            root = v.Cholesky();
            vx = root.Solve(x);
            inner = x.TransposeThisAndMultiply(vx).Cholesky();
        }
        catch (ArgumentException)
        {
            return null; // Not positive definite within rounding: no likelihood here.
        }

        var beta = inner.Solve(vx.TransposeThisAndMultiply(y));
        var rest = y - (x * beta);
        var residual = rest * root.Solve(rest) / (n - p);
        if (!(residual > Nothing * (y * y) / n))
        {
            return null;
        }

        var covariance = residual * inner.Solve(Matrix<double>.Build.DenseIdentity(p));
        return new MixedFit(
            [.. beta], [.. covariance.Diagonal().Select(Math.Sqrt)], [.. covariance.EnumerateRows().Select(r => (IReadOnlyList<double>)[.. r])], [.. ratios.Select(r => r * residual)], residual,
            root.DeterminantLn + inner.DeterminantLn + ((n - p) * (1 + Math.Log(2 * Math.PI * residual))));
    }

    // A pattern of moves on the roots of the ratios: no derivative, and the bound at 0 is only a wall. The criterion is smooth with one valley in practice.
    private static double[] Search(Func<IReadOnlyList<double>, double> criterion, int count)
    {
        double[] at = [.. Enumerable.Repeat(0.7, count)];
        var steps = Enumerable.Repeat(0.4, count).ToArray();
        double Value(double[] roots) => criterion([.. roots.Select(r => r * r)]);
        var least = Value(at);
        for (var round = 0; round < MostRounds && steps.Max() > StopStep; round++)
        {
            for (var k = 0; k < count; k++)
            {
                (at, least, steps[k]) = Along(Value, at, least, k, steps[k]);
            }
        }

        return [.. at.Select(r => r * r)];
    }

    // One coordinate: the vertex of the parabola through three points where it helps, else the better neighbour.
    private static (double[] At, double Least, double Step) Along(Func<double[], double> value, double[] at, double least, int k, double step)
    {
        double[] Moved(double to) => [.. at.Select((r, i) => i == k ? Math.Max(0, to) : r)];
        var (down, up) = (Moved(at[k] - step), Moved(at[k] + step));
        var (low, high) = (value(down), value(up));
        var bend = low + high - (2 * least);
        var candidates = new List<(double[] At, double Value)> { (at, least), (down, low), (up, high) };
        if (bend > 0 && at[k] - step >= 0)
        {
            var vertex = Moved(at[k] + (step * (low - high) / (2 * bend)));
            candidates.Add((vertex, value(vertex)));
        }

        var (to, found) = candidates.MinBy(c => c.Value);
        var moved = Math.Abs(to[k] - at[k]);
        return (to, found, found < least ? Math.Max(step / 4, Math.Min(2 * step, 2 * moved)) : step / 3);
    }
}
