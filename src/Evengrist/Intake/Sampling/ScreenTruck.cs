using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>One load in a composite: its share of the composite is its share of the mass.</summary>
/// <param name="Code">The ticket.</param>
/// <param name="Mass">Its mass, above 0.</param>
/// <param name="Found">What its own retained sample showed, mg/kg; null where it was not tested.</param>
/// <param name="ChanceOver">Chance, 0 to 1, that it exceeds the limit, from its district's history; null where not known.</param>
public sealed record ScreenTruck(string Code, Mass Mass, decimal? Found = null, double? ChanceOver = null);
