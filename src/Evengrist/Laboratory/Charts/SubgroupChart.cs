namespace Evengrist.Laboratory.Charts;

/// <summary>Means of groups with their ranges or standard deviations. Limits are those of a stated period. Model: docs/model/control-charts.md.</summary>
/// <param name="Means">Limits of the means.</param>
/// <param name="Spreads">Limits of the ranges or standard deviations.</param>
/// <param name="Sigma">One standard deviation within groups.</param>
/// <param name="From">Whether from ranges or from standard deviations.</param>
/// <param name="Size">Values to a group.</param>
public sealed record SubgroupChart(ControlLimits Means, ControlLimits Spreads, double Sigma, SigmaEstimate From, int Size)
{
    /// <summary>The limits from a period.</summary>
    /// <param name="period">Groups in the order of time, all of one size, 2 to 50; at least two groups.</param>
    /// <param name="from">From ranges or from standard deviations.</param>
    /// <exception cref="ArgumentException">The groups differ in size, are fewer, or hold what is no number; or another estimate is asked for.</exception>
    public static SubgroupChart Of(IReadOnlyList<IReadOnlyList<double>> period, SigmaEstimate from)
    {
        ArgumentNullException.ThrowIfNull(period);
        if (period.Count < 2 || period.Any(g => g.Count != period[0].Count || !g.All(double.IsFinite)))
        {
            throw new ArgumentException("A chart of groups needs two or more of one size, each value a number.", nameof(period));
        }

        var constants = ChartConstants.Of(period[0].Count);
        var (mean, spread) = (period.Average(g => g.Average()), period.Average(g => Spread(g, from)));
        var (half, limits) = from == SigmaEstimate.GroupRange ? (constants.A2, constants.D) : (constants.A3, constants.B);
        return new SubgroupChart(
            new(mean - (half * spread), mean, mean + (half * spread)), new(limits.Lower * spread, spread, limits.Upper * spread),
            spread / (from == SigmaEstimate.GroupRange ? constants.D2 : constants.C4), from, constants.Size);
    }

    /// <summary>What the chart shows of a group's spread.</summary>
    /// <exception cref="ArgumentException">It is neither of ranges nor of standard deviations.</exception>
    public static double Spread(IReadOnlyList<double> group, SigmaEstimate from)
    {
        ArgumentNullException.ThrowIfNull(group);
        var mean = group.Average();
        return from switch
        {
            SigmaEstimate.GroupRange => group.Max() - group.Min(),
            SigmaEstimate.GroupDeviation => Math.Sqrt(group.Sum(v => (v - mean) * (v - mean)) / (group.Count - 1)),
            _ => throw new ArgumentException("A chart of groups rests on their ranges or their standard deviations.", nameof(from)),
        };
    }
}
