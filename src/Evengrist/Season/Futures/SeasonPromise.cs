namespace Evengrist.Season.Futures;

/// <summary>What can be promised of the flours of a plan.</summary>
/// <param name="Spec">What it was reckoned from.</param>
/// <param name="Futures">How many futures were reckoned; fewer than asked where somebody stopped it.</param>
/// <param name="Flours">Soonest off target first.</param>
/// <param name="Cost">Mean cost of the year over the futures, money.</param>
/// <param name="CostSpread">Its standard deviation from future to future, money.</param>
public sealed record SeasonPromise(FuturesSpec Spec, int Futures, IReadOnlyList<FlourPromise> Flours, double Cost, double CostSpread);
