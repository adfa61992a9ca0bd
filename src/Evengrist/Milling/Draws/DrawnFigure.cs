namespace Evengrist.Milling.Draws;

/// <summary>A figure of many mills drawn: where it lies and how it spreads, in the figure's own unit.</summary>
/// <param name="Mean">Mean.</param>
/// <param name="StandardDeviation">Standard deviation.</param>
/// <param name="Low">What 5 % lie below.</param>
/// <param name="Median">What half lie below.</param>
/// <param name="High">What 95 % lie below.</param>
public sealed record DrawnFigure(double Mean, double StandardDeviation, double Low, double Median, double High)
{
    /// <summary>The figure of some draws; those that are no number do not count. Null where fewer than two are.</summary>
    /// <remarks>Between two draws a percentile is taken in proportion, at place 1 + (n − 1) p of those in order.</remarks>
    public static DrawnFigure? Of(IEnumerable<double> draws)
    {
        double[] ordered = [.. draws.Where(double.IsFinite)];
        if (ordered.Length < 2)
        {
            return null;
        }

        var mean = ordered.Average();
        var spread = Math.Sqrt(ordered.Sum(x => (x - mean) * (x - mean)) / (ordered.Length - 1));
        Array.Sort(ordered);
        return new DrawnFigure(mean, spread, At(ordered, 0.05), At(ordered, 0.5), At(ordered, 0.95));
    }

    private static double At(double[] ordered, double share)
    {
        var place = (ordered.Length - 1) * share;
        var below = Math.Min((int)place, ordered.Length - 2);
        return ordered[below] + ((place - below) * (ordered[below + 1] - ordered[below]));
    }
}
