namespace Evengrist.Milling.Stock;

/// <summary>Classes of particle size, each the same ratio wide, the first of all that is finer than the least edge.</summary>
public sealed class SizeClasses
{
    /// <summary>Least edge, µm.</summary>
    public const double Least = 45;

    /// <summary>Greatest edge, µm: where the breakage function of whole kernels ends [read: abstracts of the first-break work].</summary>
    public const double Most = 4000;

    private readonly double[] edges;

    private readonly double[] points;

    private SizeClasses(double[] edges)
    {
        this.edges = edges;
        points = [.. Enumerable.Range(0, 3 * edges.Length).Select(i => Middle(i / 3) * Math.Pow(Ratio, 0.5 * Math.Sqrt(0.6) * ((i % 3) - 1)))];
    }

    /// <summary>The usual fourteen.</summary>
    public static SizeClasses Fourteen { get; } = Of(14);

    /// <summary>How many classes.</summary>
    public int Count => edges.Length;

    /// <summary>Upper edge of each class over its lower one.</summary>
    public double Ratio => edges[1] / edges[0];

    /// <summary>So many classes.</summary>
    /// <param name="count">From 6 to 64.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer or more.</exception>
    public static SizeClasses Of(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 6);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, 64);
        return new SizeClasses([.. Enumerable.Range(0, count).Select(i => Least * Math.Pow(Most / Least, (double)i / (count - 1)))]);
    }

    /// <summary>Upper edge of a class, µm.</summary>
    public double Upper(int index) => edges[index];

    /// <summary>Lower edge of a class, µm: 0 of the first.</summary>
    public double Lower(int index) => index == 0 ? 0 : edges[index - 1];

    /// <summary>Size that stands for a class, µm: the middle of its edges in ratio.</summary>
    public double Middle(int index) => edges[index] / Math.Sqrt(Ratio);

    /// <summary>Three sizes that stand for a class where a law is steep within it, µm, each for a weight of <see cref="PointWeights"/>: Gauss's points in ratio.</summary>
    public double Point(int index, int point) => points[(3 * index) + point];

    /// <summary>Weights of the three points.</summary>
    public static ReadOnlySpan<double> PointWeights => [5.0 / 18, 8.0 / 18, 5.0 / 18];
}
