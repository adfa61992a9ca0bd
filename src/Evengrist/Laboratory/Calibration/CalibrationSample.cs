namespace Evengrist.Laboratory.Calibration;

/// <summary>A sample of which both the spectrum and the property are known.</summary>
/// <param name="Id">Its name in the set, once.</param>
/// <param name="Spectrum">log 1/R or another absorbance, channel by channel.</param>
/// <param name="Reference">The property by the reference method, in the unit and on the basis of the set.</param>
/// <param name="Group">What it shares with others so that they must not foretell one another: truck, replicates, crop year; null for none.</param>
/// <param name="IsValidation">Whether it is kept back to validate.</param>
public sealed record CalibrationSample(string Id, IReadOnlyList<double> Spectrum, double Reference, string? Group = null, bool IsValidation = false);
