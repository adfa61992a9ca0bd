using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Draws;

/// <summary>The lower triangle L with L Lᵀ = Σ (Cholesky): independent normals put through it have the covariance Σ. What does not vary gets a column of nothing.</summary>
internal sealed class CovarianceRoot
{
    private readonly double[][] rows;

    public CovarianceRoot(Matrix<double> covariance)
    {
        var n = covariance.RowCount;
        rows = [.. Enumerable.Range(0, n).Select(i => new double[i + 1])];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                var left = (covariance[i, j] + covariance[j, i]) / 2;
                for (var k = 0; k < j; k++)
                {
                    left -= rows[i][k] * rows[j][k];
                }

                // Below rounding of its own variance a pivot is nothing.
                rows[i][j] = i == j ? left > 1e-12 * covariance[i, i] ? Math.Sqrt(left) : 0 : rows[j][j] > 0 ? left / rows[j][j] : 0;
            }
        }
    }

    /// <summary>How many there are.</summary>
    public int Count => rows.Length;

    /// <summary>values = middle + L z.</summary>
    public void Spread(Vector<double> middle, ReadOnlySpan<double> z, Span<double> values)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            values[i] = middle[i] + Solving.Lanes.Dot(rows[i], z);
        }
    }
}
