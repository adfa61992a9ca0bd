namespace Evengrist.Intake.Sampling;

/// <summary>Standard deviations of the steps from the load to the number, all in the unit of the property; each at least 0. The site measures its own.</summary>
/// <param name="BetweenProbes">From probe to probe within one load.</param>
/// <param name="Sample">Of drawing a laboratory sample from the composite.</param>
/// <param name="Preparation">Of dividing and grinding.</param>
/// <param name="Determination">Of one determination, repeated on the same portion.</param>
/// <param name="Instrument">Of the instrument's calibration: shared by every repeat, so no repeat makes it smaller.</param>
public sealed record VarianceSpec(double BetweenProbes, double Sample = 0, double Preparation = 0, double Determination = 0, double Instrument = 0)
{
    /// <summary>Whether every standard deviation is a finite number of at least 0.</summary>
    public bool IsSound => new[] { BetweenProbes, Sample, Preparation, Determination, Instrument }.All(s => double.IsFinite(s) && s >= 0);
}
