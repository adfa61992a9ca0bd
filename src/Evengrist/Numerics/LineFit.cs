namespace Evengrist.Numerics;

/// <summary>A straight line through points that are uncertain in both directions, by weighted least squares.</summary>
/// <remarks>
/// Source: York, Evensen, López Martínez and De Basabe Delgado, American Journal of Physics 72 (2004) 367, errors not correlated. With exact x it is the usual weighted line, with one y uncertainty the usual line.
/// The errors given are those of the points' own uncertainties; times <see cref="Scatter"/> they are those of the scatter that was seen.
/// </remarks>
/// <param name="Offset">y where x is 0.</param>
/// <param name="Slope">Change of y for one of x.</param>
/// <param name="OffsetError">One standard uncertainty of the offset.</param>
/// <param name="SlopeError">One standard uncertainty of the slope.</param>
/// <param name="Covariance">Of offset and slope.</param>
/// <param name="Squares">Sum of the squared residuals, each over its variance.</param>
/// <param name="Count">Points.</param>
public sealed record LineFit(double Offset, double Slope, double OffsetError, double SlopeError, double Covariance, double Squares, int Count)
{
    private const int MostRounds = 200;
    private const double Enough = 1e-14;

    /// <summary>How much wider the points scatter than their uncertainties say: √(squares/(count − 2)); 0 where there are but two.</summary>
    public double Scatter => Count > 2 ? Math.Sqrt(Squares / (Count - 2)) : 0;

    /// <summary>The line at x.</summary>
    public double At(double x) => Offset + (Slope * x);

    /// <summary>One standard uncertainty of the line at x, from the points' own uncertainties.</summary>
    public double ErrorAt(double x) => Math.Sqrt(Math.Max(0, (OffsetError * OffsetError) + (2 * x * Covariance) + (x * x * SlopeError * SlopeError)));

    /// <summary>Lays the line.</summary>
    /// <param name="points">Two or more, not all at one x.</param>
    /// <exception cref="ArgumentException">There are fewer than two, all lie at one x, or one has no uncertainty at all.</exception>
    public static LineFit Through(IReadOnlyList<LinePoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        if (points.Count < 2 || points.All(p => p.X == points[0].X))
        {
            throw new ArgumentException("A line needs two points at different x.", nameof(points));
        }

        if (points.Any(p => !(p.UncertaintyX >= 0 && p.UncertaintyY >= 0 && p.UncertaintyX + p.UncertaintyY > 0)))
        {
            throw new ArgumentException("Every point needs an uncertainty above 0.", nameof(points));
        }

        // From the line with exact x onwards; the slope stands on both sides of its equation, so it is gone round until it stays.
        var slope = Round(points, 0, exactX: true).Slope;
        for (var round = 0; round < MostRounds; round++)
        {
            var next = Round(points, slope, exactX: false).Slope;
            var still = Math.Abs(next - slope) <= Enough * Math.Abs(next);
            slope = next;
            if (still)
            {
                break;
            }
        }

        return Of(points, slope);
    }

    private static LineFit Of(IReadOnlyList<LinePoint> points, double slope)
    {
        var (weights, meanX, meanY, _, betas) = Round(points, slope, exactX: false);
        var sum = weights.Sum();
        var offset = meanY - (slope * meanX);
        var adjusted = meanX + (weights.Zip(betas, (w, b) => w * b).Sum() / sum);
        var spread = Enumerable.Range(0, points.Count).Sum(i => weights[i] * Square(meanX + betas[i] - adjusted));
        var slopeVariance = 1 / spread;
        var squares = Enumerable.Range(0, points.Count).Sum(i => weights[i] * Square(points[i].Y - offset - (slope * points[i].X)));
        return new LineFit(offset, slope, Math.Sqrt((1 / sum) + (adjusted * adjusted * slopeVariance)), Math.Sqrt(slopeVariance), -adjusted * slopeVariance, squares, points.Count);
    }

    private static (double[] Weights, double MeanX, double MeanY, double Slope, double[] Betas) Round(IReadOnlyList<LinePoint> points, double slope, bool exactX)
    {
        (double X, double Y)[] variances = [.. points.Select(p => exactX ? (0.0, p.UncertaintyY > 0 ? Square(p.UncertaintyY) : 1) : (Square(p.UncertaintyX), Square(p.UncertaintyY)))];
        double[] weights = [.. variances.Select(v => 1 / (v.Y + (slope * slope * v.X)))];
        var sum = weights.Sum();
        var meanX = points.Zip(weights, (p, w) => w * p.X).Sum() / sum;
        var meanY = points.Zip(weights, (p, w) => w * p.Y).Sum() / sum;
        double[] betas = [.. Enumerable.Range(0, points.Count).Select(i => weights[i] * (((points[i].X - meanX) * variances[i].Y) + (slope * (points[i].Y - meanY) * variances[i].X)))];
        var up = Enumerable.Range(0, points.Count).Sum(i => weights[i] * betas[i] * (points[i].Y - meanY));
        var down = Enumerable.Range(0, points.Count).Sum(i => weights[i] * betas[i] * (points[i].X - meanX));
        return (weights, meanX, meanY, up / down, betas);
    }

    private static double Square(double x) => x * x;
}
