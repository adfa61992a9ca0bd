namespace Evengrist.Milling.Clock;

/// <summary>When the new arrives at the end of each stage.</summary>
/// <param name="Stages">One for each stage, in order.</param>
public sealed record ArrivalClock(IReadOnlyList<StageArrival> Stages)
{
    /// <summary>Shares that are asked for where nothing else is: the first of it, the half, nearly all.</summary>
    public static IReadOnlyList<double> UsualShares { get; } = [0.05, 0.5, 0.95];

    /// <summary>Reckons.</summary>
    /// <param name="stages">The stages in the order of the way.</param>
    /// <param name="shares">Shares of new whose arrival is asked for, each between 0 and 1.</param>
    /// <exception cref="ArgumentException">The stages have faults: see <see cref="ClockStage.Faults"/>.</exception>
    public static ArrivalClock Of(IReadOnlyList<ClockStage> stages, IReadOnlyList<double>? shares = null)
    {
        ArgumentNullException.ThrowIfNull(stages);
        return new ArrivalClock([.. stages.Select((stage, i) =>
        {
            ClockStage[] way = [.. stages.Take(i + 1)];
            var curve = new ArrivalCurve(way);
            return new StageArrival(stage.Name, curve, [.. (shares ?? UsualShares).Select(s => new Arrival(s, curve.When(s), Uncertainty(way, curve, s)))]);
        })]);
    }

    // Each dead time shifts the arrival by as much as itself; each stirred time by its slope; taken as independent.
    private static double Uncertainty(ClockStage[] way, ArrivalCurve curve, double share)
    {
        var variance = way.Sum(s => s.DelayUncertainty * s.DelayUncertainty);
        foreach (var (i, stage) in way.Index().Where(s => s.Item.StirredUncertainty > 0))
        {
            var step = Math.Max(1e-3, 1e-3 * stage.StirredHours);
            var longer = new ArrivalCurve([.. way.Select((s, j) => j == i ? s with { StirredHours = Math.Min(ClockStage.MostHours, s.StirredHours + step) } : s)]);
            variance += Math.Pow((longer.When(share) - curve.When(share)) / step * stage.StirredUncertainty, 2);
        }

        return Math.Sqrt(variance);
    }
}

/// <summary>When the new arrives at the end of a stage.</summary>
/// <param name="Name">The stage.</param>
/// <param name="Curve">Share of new over the hours of running since the change.</param>
/// <param name="Arrivals">When the shares asked for are there.</param>
public sealed record StageArrival(string Name, ArrivalCurve Curve, IReadOnlyList<Arrival> Arrivals);

/// <summary>When a share of what passes is new.</summary>
/// <param name="Share">The share, 0 to 1.</param>
/// <param name="Hours">Hours of running since the change.</param>
/// <param name="StandardUncertainty">One standard uncertainty of that, h, from those of the stages.</param>
public sealed record Arrival(double Share, double Hours, double StandardUncertainty);
