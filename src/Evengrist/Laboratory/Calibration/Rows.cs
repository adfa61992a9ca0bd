using System.Numerics;

namespace Evengrist.Laboratory.Calibration;

/// <summary>Arithmetic of rows of numbers, several at a time.</summary>
internal static class Rows
{
    /// <summary>Σ a b.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var width = Vector<double>.Count;
        var (first, second) = (Vector<double>.Zero, Vector<double>.Zero);
        var i = 0;
        for (; i <= a.Length - (2 * width); i += 2 * width)
        {
            first = Vector.FusedMultiplyAdd(new Vector<double>(a[i..]), new Vector<double>(b[i..]), first);
            second = Vector.FusedMultiplyAdd(new Vector<double>(a[(i + width)..]), new Vector<double>(b[(i + width)..]), second);
        }

        var sum = Vector.Sum(first + second);
        for (; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    /// <summary>into += by · row.</summary>
    public static void Add(Span<double> into, double by, ReadOnlySpan<double> row)
    {
        var width = Vector<double>.Count;
        var times = new Vector<double>(by);
        var i = 0;
        for (; i <= into.Length - width; i += width)
        {
            Vector.FusedMultiplyAdd(times, new Vector<double>(row[i..]), new Vector<double>(into[i..])).CopyTo(into[i..]);
        }

        for (; i < into.Length; i++)
        {
            into[i] += by * row[i];
        }
    }

    /// <summary>by · row.</summary>
    public static double[] Times(double by, double[] row) => Array.ConvertAll(row, x => by * x);

    /// <summary>Mean of some of the rows, channel by channel.</summary>
    public static double[] Mean(IReadOnlyList<double[]> rows, IReadOnlyList<int> which)
    {
        var mean = new double[rows[0].Length];
        foreach (var i in which)
        {
            Add(mean, 1.0 / which.Count, rows[i]);
        }

        return mean;
    }

    /// <summary>The rows less a mean.</summary>
    public static double[][] Less(IReadOnlyList<double[]> rows, double[] mean) => [.. rows.Select(row =>
    {
        var left = (double[])row.Clone();
        Add(left, -1, mean);
        return left;
    })];

    /// <summary>The numbers as a row; the very same where they are one.</summary>
    public static double[] Of(IReadOnlyList<double> numbers) => numbers as double[] ?? [.. numbers];

    /// <summary>The rows on as many axes as there are rows, where they have more channels than that: no product of two rows changes.</summary>
    /// <remarks>X = L Q′, Q′Q = 1, by the modified way of Gram and Schmidt, whose L is as good as any [Björck 1967, from memory]. Partial least squares sees products of rows alone, so that a turn of the axes changes nothing it answers.</remarks>
    public static double[][] Turned(double[][] rows)
    {
        var count = rows.Length;
        if (rows[0].Length <= count)
        {
            return rows;
        }

        double[][] left = [.. rows.Select(row => (double[])row.Clone())];
        double[][] turned = [.. rows.Select(_ => new double[count])];
        for (var axis = 0; axis < count; axis++)
        {
            var length = Math.Sqrt(Dot(left[axis], left[axis]));
            turned[axis][axis] = length;
            if (length == 0)
            {
                continue;
            }

            var direction = Times(1 / length, left[axis]);
            for (var i = axis + 1; i < count; i++)
            {
                turned[i][axis] = Dot(direction, left[i]);
                Add(left[i], -turned[i][axis], direction);
            }
        }

        return turned;
    }
}
