using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>A prior for the next load from readings on earlier ones of the same district or grower.</summary>
/// <remarks>
/// Readings spread by more than the loads: the mean square of the test error is taken out, and a tenth of the mean is left at least. The mean of n
/// loads is itself unsure, which adds s²/n. A lognormal is fitted by mean and variance, so a reading of 0 does no harm. Model: docs/model/test-or-not.md.
/// </remarks>
public static class PriorModel
{
    /// <summary>Loads needed before their spread says anything; ours.</summary>
    public const int LeastLoads = 5;

    private const double LeastSpread = 0.1;

    /// <summary>From falling numbers: normal on the liquefaction number.</summary>
    /// <param name="readings">Seconds, 60 to 1000, with one standard uncertainty in seconds; 0 where not known.</param>
    public static PriorOutcome FromFallingNumbers(IReadOnlyList<(decimal Seconds, decimal StandardUncertainty)> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return Fit(PriorScale.Liquefaction, [.. readings.Select(r =>
        {
            var liquefaction = FallingNumber.FromSeconds(r.Seconds).Liquefaction.Value;
            return (liquefaction, liquefaction * liquefaction / 6000 * (double)r.StandardUncertainty);
        })]);
    }

    /// <summary>From concentrations: lognormal.</summary>
    /// <param name="readings">mg/kg, at least 0, all on one basis, with one standard uncertainty in mg/kg; 0 where not known.</param>
    public static PriorOutcome FromConcentrations(IReadOnlyList<(decimal Milligrams, decimal StandardUncertainty)> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        return Fit(PriorScale.Lognormal, [.. readings.Select(r => ((double)r.Milligrams, (double)r.StandardUncertainty))]);
    }

    private static PriorOutcome Fit(PriorScale scale, (double Value, double Error)[] readings)
    {
        var mean = readings.Length == 0 ? 0 : readings.Average(r => r.Value);
        if (readings.Length < LeastLoads || mean <= 0)
        {
            return new TooFewLoads(mean <= 0 ? 0 : readings.Length, LeastLoads);
        }

        var variance = readings.Sum(r => (r.Value - mean) * (r.Value - mean)) / (readings.Length - 1);
        var error = readings.Average(r => r.Error * r.Error);
        var own = Math.Max(variance - error, LeastSpread * mean * LeastSpread * mean);
        return new PriorFound(new LoadPrior(scale, mean, Math.Sqrt(own + variance / readings.Length), readings.Length), Math.Sqrt(variance), Math.Sqrt(error));
    }
}
