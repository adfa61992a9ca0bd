namespace Evengrist.Milling.Learning;

/// <summary>A release test: of the stock behind a passage's rolls, what falls through its scalping cloth.</summary>
/// <param name="Passage">Code of the passage.</param>
/// <param name="ReleasePercent">Per cent of the feed; above 0, below 100.</param>
public sealed record ReleaseReading(string Passage, double ReleasePercent);
