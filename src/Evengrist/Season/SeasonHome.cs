namespace Evengrist.Season;

/// <summary>A bin, or what counts as one, in which one or more wheats of the plan lie.</summary>
/// <param name="Code">Code of the bin.</param>
/// <param name="CapacityTonnes">How much lies in it at most, t, all its wheats together.</param>
public sealed record SeasonHome(string Code, double CapacityTonnes);
