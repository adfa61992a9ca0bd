namespace Evengrist.Packing.Runs;

/// <summary>People there for the lines; times are minutes from the start of the plan.</summary>
/// <param name="From">Begin.</param>
/// <param name="Until">End.</param>
/// <param name="People">How many.</param>
public sealed record CrewShift(int From, int Until, int People);
