namespace Evengrist.Season;

/// <summary>A wheat that can be bought.</summary>
/// <param name="Wheat">What it would be: its code is the code of the offer; nothing of it lies there at the start and nothing is expected.</param>
/// <param name="Tiers">The price curve in each period, cheapest first.</param>
/// <param name="First">Number of the first period in which it can be bought; it can be milled in the period it is bought in.</param>
/// <param name="Last">Number of the last one.</param>
/// <param name="TotalTonnes">How much of it there is over all periods, t; null for no limit but the tiers'.</param>
public sealed record SeasonOffer(SeasonWheat Wheat, IReadOnlyList<OfferTier> Tiers, int First, int Last, double? TotalTonnes = null)
{
    /// <summary>Code of the offer and of the wheat it brings.</summary>
    public string Code => Wheat.Code;
}
