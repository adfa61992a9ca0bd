namespace Evengrist.Laboratory.Calibration;

/// <summary>What of a calibration a person sets anew.</summary>
public enum AdjustmentKind
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>The bias; the slope stays.</summary>
    Bias = 1,

    /// <summary>Slope and bias.</summary>
    SlopeAndBias = 2,
}
