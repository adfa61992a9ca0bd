using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Charts;

/// <summary>Several values at once, rows of a period held against their own mean and covariance (Hotelling's T², first phase). Model: docs/model/control-charts.md.</summary>
/// <param name="Distances">T² of each row.</param>
/// <param name="Limit">What a row stays below by chance: ((m − 1)²/m)·Beta(1 − a; p/2, (m − p − 1)/2).</param>
public sealed record JointChart(IReadOnlyList<double> Distances, double Limit)
{
    /// <summary>Chance of one row beyond the limit where nothing moved, as of three standard deviations.</summary>
    public const double UsualRisk = 0.0027;

    /// <summary>Rows, from 0, beyond the limit.</summary>
    public IReadOnlyList<int> Signals => [.. Distances.Index().Where(d => d.Item > Limit).Select(d => d.Index)];

    /// <summary>Charts rows.</summary>
    /// <param name="rows">All of one width, more rows than values to a row by two or more.</param>
    /// <param name="risk">Chance of a false signal to a row, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">They are fewer or differ in width, a value is no number, or a value of a row follows from its others.</exception>
    public static JointChart Of(IReadOnlyList<IReadOnlyList<double>> rows, double risk = UsualRisk)
    {
        ArgumentNullException.ThrowIfNull(rows);
        var (m, p) = (rows.Count, rows.Count > 0 ? rows[0].Count : 0);
        if (p == 0 || m < p + 2 || rows.Any(r => r.Count != p || !r.All(double.IsFinite)) || !(risk is > 0 and < 1))
        {
            throw new ArgumentException("A joint chart needs rows of one width, more of them than values to a row by two, each value a number, and a risk between 0 and 1.", nameof(rows));
        }

        var all = Matrix<double>.Build.Dense(m, p, (i, j) => rows[i][j]);
        var off = Matrix<double>.Build.Dense(m, p, (i, j) => all[i, j] - (all.ColumnSums()[j] / m));
        var covariance = off.TransposeThisAndMultiply(off) / (m - 1);
        if (covariance.ConditionNumber() > 1e12)
        {
            throw new ArgumentException("A value of the rows follows from the others: leave it out.", nameof(rows));
        }

        var solved = covariance.Solve(off.Transpose());
        return new JointChart([.. Enumerable.Range(0, m).Select(i => off.Row(i) * solved.Column(i))], (m - 1.0) * (m - 1) / m * Beta.InvCDF(p / 2.0, (m - p - 1) / 2.0, 1 - risk));
    }
}
