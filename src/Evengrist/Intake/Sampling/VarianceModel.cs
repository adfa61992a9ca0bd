using MathNet.Numerics.Distributions;

namespace Evengrist.Intake.Sampling;

/// <summary>How far a result may be off: Var = s_b²/n_probes + s_s²/n_samples + s_prep²/n_sub + s_a²/n_det + s_i².</summary>
/// <remarks>Steps are taken as independent (the GUM, JCGM 100). Model: docs/model/sampling.md.</remarks>
public static class VarianceModel
{
    /// <summary>The variance of a result, by step.</summary>
    /// <exception cref="ArgumentException">A standard deviation is negative or no number, or a count is below 1.</exception>
    public static VarianceParts Of(VarianceSpec spec, SampleSizes sizes)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(sizes);
        if (!spec.IsSound || !sizes.AreSound)
        {
            throw new ArgumentException("Standard deviations are finite and at least 0, and every step is done at least once.");
        }

        return new VarianceParts(
            spec.BetweenProbes * spec.BetweenProbes / sizes.Probes, spec.Sample * spec.Sample / sizes.Samples,
            spec.Preparation * spec.Preparation / sizes.Subsamples, spec.Determination * spec.Determination / sizes.Determinations, spec.Instrument * spec.Instrument);
    }

    /// <summary>Probes that keep the error between probes within ± E: the next whole number at or above (z·s_b/E)², at least 1.</summary>
    /// <param name="betweenProbes">s_b in the property's unit, at least 0.</param>
    /// <param name="halfWidth">E in the same unit, above 0.</param>
    /// <param name="confidence">Share of loads for which it holds, between 0.5 and 1; both sides counted.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them lies outside its range.</exception>
    public static int RequiredProbes(double betweenProbes, double halfWidth, double confidence = 0.95)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(betweenProbes);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(halfWidth);
        if (confidence is not (> 0.5 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "A confidence lies between 0.5 and 1.");
        }

        var z = Normal.InvCDF(0, 1, 0.5 + confidence / 2);
        var exact = z * betweenProbes / halfWidth;
        return (int)Math.Min(int.MaxValue, Math.Max(1, Math.Ceiling(exact * exact)));
    }
}
