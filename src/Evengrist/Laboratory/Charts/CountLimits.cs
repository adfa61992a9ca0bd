namespace Evengrist.Laboratory.Charts;

/// <summary>Limits of charts of counts and proportions; a lower limit below 0 is 0. Model: docs/model/control-charts.md.</summary>
public static class CountLimits
{
    /// <summary>Share found in samples of a size: p̄ ± 3 √(p̄(1 − p̄)/n).</summary>
    /// <param name="mean">Mean share, 0 to 1.</param>
    /// <param name="size">Pieces to a sample, above 0.</param>
    public static ControlLimits Share(double mean, double size) => Of(mean is >= 0 and <= 1 && size > 0, mean, Math.Sqrt(mean * (1 - mean) / size), "a mean share from 0 to 1 and a size above 0");

    /// <summary>Counts on one and the same amount: c̄ ± 3 √c̄.</summary>
    /// <param name="mean">Mean count, 0 or more.</param>
    public static ControlLimits Count(double mean) => Of(mean >= 0, mean, Math.Sqrt(mean), "a mean count of 0 or more");

    /// <summary>Counts to a unit on amounts that differ: ū ± 3 √(ū/n).</summary>
    /// <param name="mean">Mean count to a unit, 0 or more.</param>
    /// <param name="units">Units looked at, above 0.</param>
    public static ControlLimits Rate(double mean, double units) => Of(mean >= 0 && units > 0, mean, Math.Sqrt(mean / units), "a mean of 0 or more and an amount above 0");

    private static ControlLimits Of(bool can, double mean, double sigma, string needs) =>
        can && double.IsFinite(sigma) ? new ControlLimits(Math.Max(0, mean - (3 * sigma)), mean, mean + (3 * sigma)) : throw new ArgumentException($"Limits of counts need {needs}.");
}
