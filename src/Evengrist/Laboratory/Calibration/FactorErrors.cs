namespace Evengrist.Laboratory.Calibration;

/// <summary>Errors with a number of factors, unit of the property.</summary>
/// <param name="Factors">How many; 0 foretells the mean.</param>
/// <param name="Calibration">RMSEC = √(SSE/n) of the set itself; always falls.</param>
/// <param name="CrossValidation">RMSECV.</param>
/// <param name="StandardError">One standard error of that.</param>
/// <param name="Validation">RMSEP of the samples kept back; null where there are none.</param>
/// <param name="SpectraExplainedPercent">Of the variance of the spectra, by all these factors.</param>
public sealed record FactorErrors(int Factors, double Calibration, double CrossValidation, double StandardError, double? Validation, double SpectraExplainedPercent);
