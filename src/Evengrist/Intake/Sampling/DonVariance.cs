namespace Evengrist.Intake.Sampling;

/// <summary>Variance of a DON result on one well-mixed lot sample of wheat, as a function of the concentration.</summary>
/// <remarks>
/// <para>
/// Sampling 0.026 C^0.833 (0.454/m), preparation 0.066 C^0.833 (25/q), analysis 0.026 C^0.833/n; C in mg/kg (ppm), variance in (mg/kg)².
/// Coefficients from memory: they reproduce to the printed digit the coefficients of variation 6.3, 10.0, 6.3 and 13.4 % at 5 mg/kg in the abstract of
/// J. AOAC Int. 83(5):1285-1292 (2000). One concentration only, so the exponent itself is unchecked.
/// </para>
/// <para>A truck loaded from several fields varies more, from probe to probe: the site measures that and adds s_b²/n. Model: docs/model/sampling.md.</para>
/// </remarks>
public static class DonVariance
{
    /// <summary>Said wherever the model is used.</summary>
    public const string Mark = "variance coefficients from memory; they reproduce the CVs at 5 mg/kg of J. AOAC Int. 83(5), 2000; exponent unchecked; one well-mixed lot sample";

    private const double Sampling = 0.026;
    private const double Preparing = 0.066;
    private const double Analysing = 0.026;
    private const double Exponent = 0.833;

    /// <summary>Variance of a result at a true concentration.</summary>
    /// <param name="milligramsPerKilogram">C, at least 0.</param>
    /// <param name="sizes">Sizes of the test.</param>
    /// <param name="betweenProbes">s_b of the site in mg/kg, at least 0; 0 for one well-mixed lot.</param>
    /// <param name="probes">Probes in the composite, at least 1.</param>
    /// <exception cref="ArgumentException">A size or number cannot be.</exception>
    public static VarianceParts Of(double milligramsPerKilogram, DonSizes sizes, double betweenProbes = 0, int probes = 1)
    {
        ArgumentNullException.ThrowIfNull(sizes);
        if (!sizes.AreSound || !double.IsFinite(milligramsPerKilogram) || milligramsPerKilogram < 0 || !double.IsFinite(betweenProbes) || betweenProbes < 0 || probes < 1)
        {
            throw new ArgumentException("A concentration and a spread are finite and at least 0; sizes are above 0.");
        }

        var power = Math.Pow(milligramsPerKilogram, Exponent);
        return new VarianceParts(
            betweenProbes * betweenProbes / probes, Sampling * power * 0.454 / sizes.SampleKilograms, Preparing * power * 25 / sizes.PortionGrams, Analysing * power / sizes.Determinations, 0);
    }
}
