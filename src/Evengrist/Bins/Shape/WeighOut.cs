namespace Evengrist.Bins.Shape;

/// <summary>Grain drawn from a bin over a scale, the bin sounded before and after.</summary>
/// <param name="Code">What it is called: a date.</param>
/// <param name="Before">The sounding before.</param>
/// <param name="After">The sounding after.</param>
/// <param name="Density">The loose density of what was drawn.</param>
/// <param name="WeighedTonnes">What the scale weighed, t, above 0.</param>
/// <param name="WeighedUncertainty">One standard uncertainty of it, t.</param>
public sealed record WeighOut(string Code, Sounding Before, Sounding After, BulkDensity Density, double WeighedTonnes, double WeighedUncertainty);
