namespace Evengrist.Season;

/// <summary>One step of a price curve.</summary>
/// <param name="TonnesPerPeriod">Up to so much in a period at this price, t; +∞ for no limit.</param>
/// <param name="PricePerTonne">Money per t, delivered.</param>
public sealed record OfferTier(double TonnesPerPeriod, double PricePerTonne);
