namespace Evengrist.Laboratory.Charts;

/// <summary>Single values and the moving range of two. Limits are those of a stated period: they are reckoned once and kept. Model: docs/model/control-charts.md.</summary>
/// <param name="Values">Limits of the single values: mean ± 3·MR̄/d₂.</param>
/// <param name="Ranges">Limits of the moving range: 0, MR̄, D₄·MR̄.</param>
/// <param name="Sigma">One standard deviation from one value to the next, MR̄/d₂.</param>
/// <param name="Count">How many values they rest on.</param>
public sealed record IndividualsChart(ControlLimits Values, ControlLimits Ranges, double Sigma, int Count)
{
    /// <summary>Fewest values.</summary>
    public const int Fewest = 2;

    /// <summary>The limits from a period.</summary>
    /// <param name="period">Values in the order of time, one unit and basis; at least two, each a number.</param>
    /// <exception cref="ArgumentException">There are fewer, or one is no number.</exception>
    public static IndividualsChart Of(IReadOnlyList<double> period)
    {
        ArgumentNullException.ThrowIfNull(period);
        if (period.Count < Fewest || !period.All(double.IsFinite))
        {
            throw new ArgumentException($"A chart of single values needs {Fewest} or more, each a number.", nameof(period));
        }

        var sigma = MovingRanges(period).Average() / ChartConstants.Of(2).D2;
        return new IndividualsChart(Around(period.Average(), sigma), RangesOf(sigma), sigma, period.Count);
    }

    /// <summary>Limits of single values: centre ± 3 σ.</summary>
    public static ControlLimits Around(double centre, double sigma) => new(centre - (3 * sigma), centre, centre + (3 * sigma));

    /// <summary>Limits of the moving range of two: 0, d₂σ, D₄d₂σ.</summary>
    public static ControlLimits RangesOf(double sigma)
    {
        var constants = ChartConstants.Of(2);
        return new(0, constants.D2 * sigma, constants.D.Upper * constants.D2 * sigma);
    }

    /// <summary>What each value differs from the one before, without sign; one fewer than there are values.</summary>
    public static IReadOnlyList<double> MovingRanges(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return [.. values.Zip(values.Skip(1), (a, b) => Math.Abs(b - a))];
    }
}
