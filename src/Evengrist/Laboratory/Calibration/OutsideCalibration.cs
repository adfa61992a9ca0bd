namespace Evengrist.Laboratory.Calibration;

/// <summary>Why a sample lies outside what a calibration was made of. Such a reading is shown; it releases and prices nothing by itself, and the reference method is asked.</summary>
[Flags]
public enum OutsideCalibration
{
    /// <summary>It does not.</summary>
    None = 0,

    /// <summary>Its scores lie far from the set's: global H above 3.</summary>
    Scores = 1,

    /// <summary>Its spectrum has what the factors do not know: Q above three times the set's mean.</summary>
    Residual = 2,

    /// <summary>The value lies beyond the references of the set.</summary>
    Range = 4,
}
