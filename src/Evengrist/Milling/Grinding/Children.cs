using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Grinding;

/// <summary>Where the pieces of what breaks in a size class fall: the breakage matrix, columns of parents adding up to 1, only into the same and finer classes.</summary>
/// <remarks>The law of the pieces is taken as a share of the parent's size, the parent at three points of its class.</remarks>
public sealed class Children
{
    private readonly double[] matrix;

    private Children(int count, double[] matrix) => (Count, this.matrix) = (count, matrix);

    /// <summary>How many classes.</summary>
    public int Count { get; }

    /// <summary>Share of class <paramref name="parent"/> that falls into class <paramref name="child"/>.</summary>
    public double this[int child, int parent] => matrix[(parent * Count) + child];

    /// <summary>The shares of one parent, by child class.</summary>
    internal ReadOnlySpan<double> Parent(int parent) => matrix.AsSpan(parent * Count, parent + 1);

    /// <summary>The matrix of a law.</summary>
    /// <param name="classes">The size classes.</param>
    /// <param name="finer">Share of the pieces finer than a share of the parent's size: 0 at 0, 1 at 1, rising.</param>
    public static Children Of(SizeClasses classes, Func<double, double> finer)
    {
        ArgumentNullException.ThrowIfNull(classes);
        ArgumentNullException.ThrowIfNull(finer);
        var n = classes.Count;
        var matrix = new double[n * n];
        for (var parent = 0; parent < n; parent++)
        {
            for (var point = 0; point < 3; point++)
            {
                var (size, weight, below) = (classes.Point(parent, point), SizeClasses.PointWeights[point], 0.0);
                for (var child = 0; child <= parent; child++)
                {
                    var upTo = child == parent ? 1 : finer(classes.Upper(child) / size);
                    matrix[(parent * n) + child] += weight * (upTo - below);
                    below = upTo;
                }
            }
        }

        return new Children(n, matrix);
    }
}
