using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Watch;

/// <summary>Sums over pairs from the first on, so that every start of a move along a direction is scored at once, after any number of pairs.</summary>
/// <remarks>The level of reference and wheat is free, that of the difference known with a precision b: with the inverse covariance Λ of one row, finding the level takes Λ/n − g·ee′ from what is known of one row, g = b/(n(n + bσ²)), e the difference, σ² its variance.</remarks>
internal sealed class PairSums
{
    private readonly ChangeDirection[] directions;
    private readonly double biasPrecision, variance;
    private readonly double[,] own;
    private readonly double[][] sums, turned;
    private readonly double[] differences;

    /// <param name="rows">Reference, instrument less reference less known bias, wheat where read; one row for each pair.</param>
    /// <param name="directions">In which it is scored.</param>
    /// <param name="covariance">Of one row.</param>
    /// <param name="inverse">Of the covariance.</param>
    /// <param name="biasPrecision">How precisely the level of the difference is known beforehand: one over its variance.</param>
    public PairSums(IReadOnlyList<double[]> rows, ChangeDirection[] directions, Matrix<double> covariance, Matrix<double> inverse, double biasPrecision)
    {
        (this.directions, this.biasPrecision, variance) = (directions, biasPrecision, covariance[1, 1]);
        differences = Summed(rows.Count, i => rows[i][1]);
        own = new double[directions.Length, directions.Length];
        (sums, turned) = (new double[directions.Length][], new double[directions.Length][]);
        foreach (var (d, direction) in directions.Index())
        {
            var weights = inverse.LeftMultiply(Vector<double>.Build.Dense(direction.Along)).ToArray();
            foreach (var (e, other) in directions.Index())
            {
                own[d, e] = Dot(weights, other.Along);
            }

            sums[d] = Summed(rows.Count, i => Dot(weights, rows[i]));
            turned[d] = Summed(rows.Count, i => (i + 1) * Dot(weights, rows[i]));
        }
    }

    /// <summary>A step along a direction after so many pairs, out of so many.</summary>
    public MoveScore Step(int direction, int after, int pairs) => new(
        sums[direction][pairs] - sums[direction][after] - ((pairs - after) * Level(direction, pairs)), Shared(direction, direction, after, pairs), directions[direction].Unit);

    /// <summary>What the scores of steps along two directions share.</summary>
    public double Shared(int left, int right, int after, int pairs)
    {
        double m = pairs - after;
        return (m * own[left, right]) - (m * m * Taken(left, right, pairs));
    }

    /// <summary>A move that grows by its size from pair to pair.</summary>
    public MoveScore Drift(int direction, int after, int pairs)
    {
        double m = pairs - after;
        var count = m * (m + 1) / 2;
        return new(
            turned[direction][pairs] - turned[direction][after] - (after * (sums[direction][pairs] - sums[direction][after])) - (count * Level(direction, pairs)),
            (count * ((2 * m) + 1) / 3 * own[direction, direction]) - (count * count * Taken(direction, direction, pairs)), directions[direction].Unit);
    }

    private double Level(int direction, int pairs) => (sums[direction][pairs] / pairs) - (FromBias(pairs) * directions[direction].OnDifference * differences[pairs]);

    private double Taken(int left, int right, int pairs) => (own[left, right] / pairs) - (FromBias(pairs) * directions[left].OnDifference * directions[right].OnDifference);

    private double FromBias(int pairs) => biasPrecision / (pairs * (pairs + (biasPrecision * variance)));

    private static double Dot(double[] left, double[] right)
    {
        var sum = 0.0;
        for (var i = 0; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }

    private static double[] Summed(int count, Func<int, double> value)
    {
        var sums = new double[count + 1];
        for (var i = 0; i < count; i++)
        {
            sums[i + 1] = sums[i] + value(i);
        }

        return sums;
    }
}
