namespace Evengrist.Milling.Learning;

/// <summary>One test sieve of a sieve analysis of the stock behind a passage's rolls.</summary>
/// <param name="Passage">Code of the passage.</param>
/// <param name="ApertureMicrometres">Opening of the test sieve, µm.</param>
/// <param name="ThroughPercent">What fell through, per cent of the stock; above 0, below 100.</param>
public sealed record SieveReading(string Passage, double ApertureMicrometres, double ThroughPercent);
