using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Watch;

/// <summary>Every start of every rival, weighed against "nothing moved": normal readings, levels and sizes integrated out in closed form. Model: docs/model/meter-or-wheat.md.</summary>
internal sealed class ChangeSearch
{
    private readonly WatchDeviations deviations;
    private readonly double biasPrecision;
    private readonly Matrix<double> inverse;
    private readonly ChangeRival[] rivals;

    public ChangeSearch(WatchSpec spec, WatchDeviations deviations)
    {
        this.deviations = deviations;
        var bias = spec.BiasShare * deviations.Pair;
        biasPrecision = 1 / (bias * bias);
        inverse = Covariance(spec.HasWheat).Inverse();
        rivals = [.. ChangeRival.Of(spec, deviations)];
    }

    /// <summary>Log odds against "nothing moved", size and its standard deviation for every rival and start; the start is how many pairs came before it.</summary>
    /// <param name="rows">Reference, instrument less reference less known bias, wheat where read; one row for each pair.</param>
    public IEnumerable<(ChangeRival Rival, IReadOnlyList<ChangeStart> Starts)> Of(IReadOnlyList<double[]> rows)
    {
        var (n, p) = (rows.Count, inverse.RowCount);
        var precision = inverse * n;
        precision[1, 1] += biasPrecision;
        var spread = precision.Inverse();
        var taken = inverse * spread * inverse;
        var sum = Vector<double>.Build.Dense(p, c => rows.Sum(r => r[c]));
        var level = spread * (inverse * sum);
        var whitened = new double[n][];
        for (var i = 0; i < n; i++)
        {
            whitened[i] = new double[p];
            for (var a = 0; a < p; a++)
            {
                for (var b = 0; b < p; b++)
                {
                    whitened[i][a] += inverse[a, b] * (rows[i][b] - level[b]);
                }
            }
        }

        foreach (var rival in rivals)
        {
            yield return (rival, rival.Starts(whitened, inverse, taken));
        }
    }

    private Matrix<double> Covariance(bool hasWheat)
    {
        var (e, m, w, u) = (Square(deviations.Reference), Square(deviations.Instrument), Square(deviations.Swing), Square(deviations.Wheat));
        return Matrix<double>.Build.DenseOfArray(hasWheat ? new[,] { { w + e, -e, w }, { -e, e + m, 0 }, { w, 0, w + u } } : new[,] { { w + e, -e }, { -e, e + m } });
    }

    private static double Square(double x) => x * x;
}
