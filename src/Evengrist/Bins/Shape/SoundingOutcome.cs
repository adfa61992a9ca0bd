using Evengrist.Quantities;

namespace Evengrist.Bins.Shape;

/// <summary>What comes of a sounding.</summary>
public abstract record SoundingOutcome;

/// <summary>What a sounding says lies in the bin.</summary>
/// <param name="LevelMetres">Height of the grain at the wall, m; below zero where it stands clear of it.</param>
/// <param name="CubicMetres">Volume, m³.</param>
/// <param name="VolumeUncertainty">One standard uncertainty of the volume, m³: tape and repose.</param>
/// <param name="Tonnes">Mass, t.</param>
/// <param name="StandardUncertaintyTonnes">One standard uncertainty of the mass, t: the parts in quadrature.</param>
/// <param name="Parts">What each input contributes: its words and its one standard uncertainty in t.</param>
/// <param name="Stock">The mass as a figure that opens to its formula and inputs.</param>
public sealed record Sounded(
    double LevelMetres, double CubicMetres, double VolumeUncertainty, double Tonnes, double StandardUncertaintyTonnes,
    IReadOnlyList<(string What, double Tonnes)> Parts, Figure Stock) : SoundingOutcome;

/// <summary>The sounding cannot be made into a stock.</summary>
/// <param name="Reasons">Each a sentence that says what to do.</param>
public sealed record NotSounded(IReadOnlyList<string> Reasons) : SoundingOutcome;
