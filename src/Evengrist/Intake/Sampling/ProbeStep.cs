namespace Evengrist.Intake.Sampling;

/// <summary>One line of a sampling rule.</summary>
/// <param name="UpTo">The range ends here, included; in m or t; null for no end.</param>
/// <param name="Increments">Increments to take: probes or cuts.</param>
/// <param name="CompositeGrams">What they make up together at least, g; null where no such figure is known.</param>
public sealed record ProbeStep(decimal? UpTo, int Increments, int? CompositeGrams = null);
