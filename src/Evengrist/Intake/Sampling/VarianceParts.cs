namespace Evengrist.Intake.Sampling;

/// <summary>Variance of a result by step, in the square of the property's unit.</summary>
/// <param name="Probes">From probe to probe, s_b²/n.</param>
/// <param name="Sample">Of the laboratory sample.</param>
/// <param name="Preparation">Of preparation.</param>
/// <param name="Determination">Of the determination.</param>
/// <param name="Instrument">Of the instrument; no repeat divides it.</param>
public sealed record VarianceParts(double Probes, double Sample, double Preparation, double Determination, double Instrument)
{
    /// <summary>Variance of the result.</summary>
    public double Total => Probes + Sample + Preparation + Determination + Instrument;

    /// <summary>One standard deviation of the result, in the property's unit.</summary>
    public double StandardDeviation => Math.Sqrt(Total);

    /// <summary>What more probes do not make smaller, as a standard deviation.</summary>
    public double BesideProbes => Math.Sqrt(Total - Probes);
}
