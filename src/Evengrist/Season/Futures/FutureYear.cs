namespace Evengrist.Season.Futures;

/// <summary>What came of one future.</summary>
/// <param name="Flours">In the order of the season's flours.</param>
/// <param name="Costs">What it cost, misses reckoned on true quality beyond the limit and the relief granted, tolerance or not.</param>
public sealed record FutureYear(IReadOnlyList<FlourFate> Flours, SeasonCosts Costs);
