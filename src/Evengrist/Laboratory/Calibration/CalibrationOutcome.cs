namespace Evengrist.Laboratory.Calibration;

/// <summary>A calibration and what speaks for it.</summary>
/// <param name="Calibration">With the number of factors that was taken.</param>
/// <param name="Curve">Errors with 0, 1, 2 … factors.</param>
/// <param name="Suggested">Factors by each rule.</param>
/// <param name="Findings">Of the samples it is made of.</param>
/// <param name="Validation">Of the samples kept back, in their order: id, reference, reading.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record CalibrationOutcome(
    SpectralCalibration Calibration, IReadOnlyList<FactorErrors> Curve, IReadOnlyDictionary<FactorChoice, int> Suggested, IReadOnlyList<SampleFinding> Findings,
    IReadOnlyList<(string Id, double Reference, SpectralReading Reading)> Validation, IReadOnlyList<string> Remarks);
