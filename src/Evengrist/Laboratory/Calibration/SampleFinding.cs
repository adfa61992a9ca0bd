namespace Evengrist.Laboratory.Calibration;

/// <summary>What the calibration says of one of its own samples.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Reference">By the reference method.</param>
/// <param name="Fitted">By the calibration it is part of.</param>
/// <param name="CrossValidated">By the samples outside its segment.</param>
/// <param name="Leverage">h = Σ t²/Σt², without 1/n.</param>
/// <param name="GlobalH">h (n − 1)/factors; its mean over the set is about 1.</param>
/// <param name="Residual">Q: squared distance of the treated spectrum from the factors.</param>
/// <param name="FarInScores">Whether leverage is above 3 factors/n or global H above 3 [common practice, from memory].</param>
/// <param name="FarInResidual">Whether Q is above three times the set's mean.</param>
/// <param name="FarInProperty">Whether the cross-validated error is above three times SECV: the reference or the label may be wrong.</param>
public sealed record SampleFinding(string Id, double Reference, double Fitted, double CrossValidated, double Leverage, double GlobalH, double Residual, bool FarInScores, bool FarInResidual, bool FarInProperty)
{
    /// <summary>Whether anything is to be looked at.</summary>
    public bool IsOutlying => FarInScores || FarInResidual || FarInProperty;
}
