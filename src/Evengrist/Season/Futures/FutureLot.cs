namespace Evengrist.Season.Futures;

/// <summary>Wheat of one quality in a future: what it truly is and what is believed of it.</summary>
/// <param name="Wheat">Number of the wheat, in the order of <see cref="FutureFrame.Wheats"/>.</param>
/// <param name="Period">Number of the period it comes in; −1 for what lay there at the start.</param>
/// <param name="Tonnes">t as it lies; for an offer 0: how much comes is decided in the future.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="True">True values, in the order of <see cref="FutureFrame.Properties"/>, each on the scale of <see cref="SeasonScale"/>.</param>
/// <param name="Believed">What they were read as, the same way.</param>
public sealed record FutureLot(int Wheat, int Period, double Tonnes, double MoisturePercent, IReadOnlyList<double> True, IReadOnlyList<double> Believed);
