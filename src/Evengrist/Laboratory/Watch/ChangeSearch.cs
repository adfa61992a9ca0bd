using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Watch;

/// <summary>Every start of every rival, weighed against "nothing moved": normal readings, levels and sizes integrated out in closed form. Model: docs/model/meter-or-wheat.md.</summary>
internal sealed class ChangeSearch(WatchSpec spec, WatchDeviations deviations)
{
    private readonly ChangeDirection[] directions = ChangeRival.Directions(spec, deviations);
    private readonly ChangeRival[] rivals = ChangeRival.Of(spec);
    private readonly Matrix<double> covariance = Covariance(spec, deviations), inverse = Covariance(spec, deviations).Inverse();

    /// <summary>The sums it goes by.</summary>
    /// <param name="rows">Reference, instrument less reference less known bias, wheat where read; one row for each pair.</param>
    public PairSums Sums(IReadOnlyList<double[]> rows) => new(rows, directions, covariance, inverse, 1 / Square(spec.BiasShare * deviations.Pair));

    /// <summary>Every rival's starts.</summary>
    /// <param name="sums">Of the pairs.</param>
    /// <param name="pairs">How many of them are judged, from the first.</param>
    public (ChangeRival Rival, ChangeStart[] Starts)[] Of(PairSums sums, int pairs) => [.. rivals.Select(r => (r, r.Starts(sums, pairs)))];

    /// <summary>Whether something may have moved at all: a bound that no sizes exceed, to spare weighing every start.</summary>
    /// <param name="sums">Of the pairs.</param>
    /// <param name="pairs">How many of them are judged, from the first.</param>
    public bool MayHaveMoved(PairSums sums, int pairs) => rivals.Sum(r => r.MostFit(sums, pairs)) >= spec.Asked;

    /// <summary>Rows in which one thing alone moved by the size sought, without chance, half-way or eight pairs before the last: an instrument's move, a flour's, a mill's.</summary>
    /// <param name="pairs">How many pairs.</param>
    public IEnumerable<double[][]> Sought(int pairs) =>
        directions.Select(d => Enumerable.Range(0, pairs).Select(i => d.Along.Select(x => i < pairs - Math.Min(AskedFit.Due, pairs / 2) ? 0 : x * SizePrior.Sought * d.Unit).ToArray()).ToArray());

    private static Matrix<double> Covariance(WatchSpec spec, WatchDeviations by)
    {
        var (e, m, w, u) = (Square(by.Reference), Square(by.Instrument), Square(by.Swing), Square(by.Wheat));
        return Matrix<double>.Build.DenseOfArray(spec.HasWheat ? new[,] { { w + e, -e, w }, { -e, e + m, 0 }, { w, 0, w + u } } : new[,] { { w + e, -e }, { -e, e + m } });
    }

    private static double Square(double x) => x * x;
}
