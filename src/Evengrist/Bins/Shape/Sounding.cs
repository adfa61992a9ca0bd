namespace Evengrist.Bins.Shape;

/// <summary>A tape let down from the eave to the grain.</summary>
/// <param name="UllageMetres">Free height from the eave down to the grain, m.</param>
/// <param name="Surface">How the top lay.</param>
/// <param name="From">Where the tape hung.</param>
/// <param name="StandardUncertaintyMetres">One standard uncertainty, m, unevenness of the surface included; 0.10 [design].</param>
public sealed record Sounding(double UllageMetres, Surface Surface, SoundedFrom From = SoundedFrom.Wall, double StandardUncertaintyMetres = 0.10);
