namespace Evengrist.Laboratory.Calibration;

/// <summary>What a calibration foretells of a spectrum.</summary>
/// <param name="Value">Unit and basis of the calibration, bias and slope applied.</param>
/// <param name="StandardUncertainty">One standard uncertainty: the error of validation (of cross-validation where there was none) times √((1 + 1/n + h)/(1 + 1/n + A/n)) [ours].</param>
/// <param name="Leverage">h, without 1/n.</param>
/// <param name="GlobalH">h (n − 1)/A.</param>
/// <param name="Residual">Q.</param>
/// <param name="Outside">In what it lies outside the calibration.</param>
public sealed record SpectralReading(double Value, double StandardUncertainty, double Leverage, double GlobalH, double Residual, OutsideCalibration Outside)
{
    /// <summary>What stands behind the method of a recorded reading that lies outside, so that nothing takes it for one of the method.</summary>
    public const string OutsideMark = ", outside calibration";

    /// <summary>Whether it may release or price by itself.</summary>
    public bool MayDecide => Outside == OutsideCalibration.None;
}
