namespace Evengrist.Season;

/// <summary>A part of a wheat that leaves its bin before the next one does.</summary>
/// <param name="Tonnes">t as it lies, above 0.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">Its quality; a property that is missing is that of the wheat.</param>
public sealed record SeasonLayer(double Tonnes, double MoisturePercent, SeasonQuality Quality);
