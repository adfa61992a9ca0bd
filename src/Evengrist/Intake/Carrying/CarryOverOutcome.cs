using Evengrist.Quantities;

namespace Evengrist.Intake.Carrying;

/// <summary>What a load picks up of the last grain through its route.</summary>
/// <param name="Carried">Kilograms of the last grain in the load.</param>
/// <param name="Share">The same as a share of the load, per cent.</param>
/// <param name="Until">Tonnes after which what passes holds less of it than <paramref name="Threshold"/>; 0 where it never holds so much.</param>
/// <param name="Threshold">The share asked about, per cent.</param>
public sealed record CarryOverOutcome(Figure Carried, Figure Share, Figure Until, double Threshold);
