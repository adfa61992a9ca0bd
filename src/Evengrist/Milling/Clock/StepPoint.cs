namespace Evengrist.Milling.Clock;

/// <summary>A reading of what passes a point, before or after a change further up.</summary>
/// <param name="Hours">Hours of running since the change; below 0 before it.</param>
/// <param name="Value">The value, in the unit of them all.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it, above 0.</param>
public sealed record StepPoint(double Hours, double Value, double StandardUncertainty);
