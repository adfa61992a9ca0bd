namespace Evengrist.Bins.Shape;

/// <summary>Density of grain as it lies in the bin over the loose density: above 1, rising with depth and moisture.</summary>
/// <param name="Value">The factor, 0.8 to 1.3.</param>
/// <param name="StandardUncertainty">One standard uncertainty, at least 0.</param>
/// <param name="Words">Where it comes from.</param>
public sealed record PackFactor(double Value, double StandardUncertainty, string Words)
{
    /// <summary>Whether it was found by weighing this bin out.</summary>
    public bool IsCalibrated { get; init; }

    /// <summary>Used where no weigh-out is kept: 1.055 ± 0.014, the middle of 1.03 to 1.08 quoted for tall wheat bins [memory]; a uniform range.</summary>
    public static PackFactor FromMemory { get; } = new(1.055, 0.05 / Math.Sqrt(12), "not calibrated: the middle of 1.03 to 1.08 for tall wheat bins, from memory. Weigh the bin out once.");
}
