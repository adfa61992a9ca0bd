namespace Evengrist.Laboratory.Validation;

/// <summary>What a validation asks for.</summary>
public enum ValidationDecision
{
    /// <summary>Leave it as it is.</summary>
    None = 0,

    /// <summary>Set the bias alone.</summary>
    BiasOnly = 1,

    /// <summary>Set slope and bias.</summary>
    SlopeAndBias = 2,

    /// <summary>Calibrate anew: what neither would mend is too large.</summary>
    Recalibrate = 3,
}
