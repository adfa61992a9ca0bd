namespace Evengrist.Laboratory.Calibration;

/// <summary>Standard errors of a calibration, unit of the property.</summary>
/// <param name="Calibration">SEC = √(SSE/(n − A − 1)).</param>
/// <param name="CrossValidation">SECV, bias taken out.</param>
/// <param name="Prediction">SEP of samples kept back, bias taken out; null where there were fewer than two.</param>
/// <param name="Bias">Of the samples kept back, reference − foretold; null where there were none.</param>
public sealed record CalibrationErrors(double Calibration, double CrossValidation, double? Prediction = null, double? Bias = null);
