namespace Evengrist.Season;

/// <summary>The quality with which a plan reckons a wheat that has layers, in a period.</summary>
/// <param name="Wheat">Code of the wheat.</param>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">Its quality.</param>
public sealed record PlannedQuality(string Wheat, int Period, double MoisturePercent, SeasonQuality Quality);
