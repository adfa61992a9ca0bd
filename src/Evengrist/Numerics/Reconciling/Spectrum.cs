using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Numerics.Reconciling;

/// <summary>A matrix parted into what it reaches and what it does not, by its singular values; the rank is thereby seen where rows or columns follow from others.</summary>
internal sealed class Spectrum
{
    private const double Relative = 1e-9;
    private const double Least = 1e-13;
    private readonly MathNet.Numerics.LinearAlgebra.Factorization.Svd<double>? svd;
    private readonly int rows;
    private readonly int columns;

    public Spectrum(Matrix<double>? matrix, int rows, int columns)
    {
        (this.rows, this.columns) = (rows, columns);
        if (matrix is null)
        {
            return;
        }

        svd = matrix.Svd();
        var least = Math.Max(Least, Relative * svd.S[0]);
        Rank = svd.S.Count(s => s > least);
    }

    public int Rank { get; }

    /// <summary>Columns that span what no input reaches.</summary>
    public Matrix<double>? Unreached => rows == Rank ? null : svd is null ? Matrix<double>.Build.DenseIdentity(rows) : svd.U.SubMatrix(0, rows, Rank, rows - Rank);

    /// <summary>Columns that span the inputs that matter.</summary>
    public Matrix<double>? Felt => Rank == 0 ? null : svd!.VT.SubMatrix(0, Rank, 0, columns).Transpose();

    /// <summary>The least input whose output is nearest to the one wanted.</summary>
    public Vector<double> Input(Vector<double> output)
    {
        if (Rank == 0)
        {
            return Vector<double>.Build.Dense(columns);
        }

        var parts = svd!.U.SubMatrix(0, rows, 0, Rank).TransposeThisAndMultiply(output);
        return Felt! * parts.PointwiseDivide(svd.S.SubVector(0, Rank));
    }

    /// <summary>The same for each column of a matrix.</summary>
    public Matrix<double> Inputs(Matrix<double> outputs) => Matrix<double>.Build.DenseOfColumnVectors(outputs.EnumerateColumns().Select(Input));
}
