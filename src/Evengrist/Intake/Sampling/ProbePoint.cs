namespace Evengrist.Intake.Sampling;

/// <summary>Where a probe goes in, seen from above.</summary>
/// <param name="Number">From 1, in the order of probing.</param>
/// <param name="AlongMetres">From the front of the vehicle, m.</param>
/// <param name="AcrossMetres">From its left side, m.</param>
public sealed record ProbePoint(int Number, double AlongMetres, double AcrossMetres);
