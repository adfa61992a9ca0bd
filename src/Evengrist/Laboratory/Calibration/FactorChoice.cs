namespace Evengrist.Laboratory.Calibration;

/// <summary>How many factors are taken, from errors of cross-validation; never from those of the calibration itself, which always fall.</summary>
public enum FactorChoice
{
    /// <summary>The fewest whose error is below the least one plus one standard error of that (as R's <c>selectNcomp</c> with <c>onesigma</c>).</summary>
    OneStandardError,

    /// <summary>The fewest of which one more makes the error larger.</summary>
    FirstMinimum,

    /// <summary>The fewest with the least error.</summary>
    Least,
}
