using NodaTime;

namespace Evengrist.Laboratory.Calibration;

/// <summary>A change of bias or slope after the calibration was made: what is shown = <paramref name="Bias"/> + <paramref name="Slope"/> · what the coefficients give. Each takes the place of the one before.</summary>
/// <param name="At">When.</param>
/// <param name="By">Who decided it.</param>
/// <param name="Bias">Added, unit of the property.</param>
/// <param name="Slope">Multiplied by, above 0; 1 for a change of bias alone.</param>
/// <param name="Samples">Pairs of reference and reading it rests on.</param>
/// <param name="Why">In words.</param>
/// <param name="Test">The test of those pairs in a line; empty where none was kept with it.</param>
public sealed record CalibrationAdjustment(Instant At, string By, double Bias, double Slope, int Samples, string Why, string Test = "");
