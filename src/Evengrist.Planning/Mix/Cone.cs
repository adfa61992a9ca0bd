namespace Evengrist.Planning.Mix;

/// <summary>One end of a limit on the shares x: Σ a·x ≥ z·√(Σ (o·x)² + Σ over instruments (Σ s·x)²).</summary>
/// <remarks>
/// The right side is convex and of first degree in x, so that its tangent at any x̂ runs through the origin and lies below it everywhere: ∇·x. A linear
/// problem with such tangents is never tighter than the true one, and as tight where they touch.
/// </remarks>
internal sealed class Cone(double[] mean, double[] own, IReadOnlyList<double[]> shared, double margin)
{
    /// <summary>a: how far each bin by itself is on the right side of the limit.</summary>
    public double[] Mean => mean;

    /// <summary>Whether the mean alone does not decide.</summary>
    public bool HasMargin => margin > 0 && (own.Any(o => o != 0) || shared.Any(s => s.Any(c => c != 0)));

    /// <summary>The largest number in it, by which rows are scaled.</summary>
    public double Size { get; } = Math.Max(1e-12, mean.Max(Math.Abs) + (margin * Math.Max(own.Max(Math.Abs), shared.Select(s => s.Max(Math.Abs)).DefaultIfEmpty(0).Max())));

    /// <summary>Σ a·x − z·√(…): below zero where the end is not kept, relative to <see cref="Size"/>.</summary>
    public double Slack(double[] x) => (Dot(mean, x) - (margin * Norm(x))) / Size;

    /// <summary>The coefficients of the tangent at x̂; those of the mean alone where the root vanishes there.</summary>
    public double[] Tangent(double[] at)
    {
        var norm = Norm(at);
        var row = (double[])mean.Clone();
        if (norm <= 0)
        {
            return row;
        }

        var sums = shared.Select(s => Dot(s, at)).ToArray();
        for (var j = 0; j < row.Length; j++)
        {
            var slope = own[j] * own[j] * at[j];
            for (var g = 0; g < sums.Length; g++)
            {
                slope += sums[g] * shared[g][j];
            }

            row[j] -= margin * slope / norm;
        }

        return row;
    }

    private double Norm(double[] x)
    {
        var sum = 0.0;
        for (var j = 0; j < x.Length; j++)
        {
            sum += own[j] * x[j] * own[j] * x[j];
        }

        foreach (var group in shared)
        {
            var part = Dot(group, x);
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }

    private static double Dot(double[] a, double[] x)
    {
        var sum = 0.0;
        for (var j = 0; j < x.Length; j++)
        {
            sum += a[j] * x[j];
        }

        return sum;
    }
}
