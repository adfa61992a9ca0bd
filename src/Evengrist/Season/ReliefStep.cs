namespace Evengrist.Season;

/// <summary>Some relaxation of a limit that can be bought from a customer.</summary>
/// <param name="By">How far the limit yields, in the unit of the property, above 0; steps add up, the first one first.</param>
/// <param name="CostPerTonne">Money for each t of wheat mix that makes use of the whole step; a part of it costs its part.</param>
public sealed record ReliefStep(double By, double CostPerTonne);
