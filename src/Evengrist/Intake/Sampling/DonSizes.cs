namespace Evengrist.Intake.Sampling;

/// <summary>Sizes of a DON test.</summary>
/// <param name="SampleKilograms">m, the laboratory sample that is ground, kg; above 0.</param>
/// <param name="PortionGrams">q, the portion taken from the ground sample, g; above 0.</param>
/// <param name="Determinations">n, determinations whose mean is reported; at least 1.</param>
public sealed record DonSizes(double SampleKilograms = 0.454, double PortionGrams = 25, int Determinations = 1)
{
    /// <summary>The sizes the published variances were stated for: 0.454 kg (1 lb), 25 g, one determination.</summary>
    public static DonSizes Base { get; } = new();

    /// <summary>Whether every size can be.</summary>
    public bool AreSound => SampleKilograms is > 0 and <= 1000 && PortionGrams is > 0 and <= 100_000 && Determinations is >= 1 and <= 1000;
}
