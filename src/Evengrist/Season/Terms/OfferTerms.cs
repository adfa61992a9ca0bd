using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>A wheat that can be bought for some time.</summary>
/// <param name="Code">Its code, of its own among bins, offers and districts.</param>
/// <param name="WheatClass">Its class.</param>
/// <param name="First">First day.</param>
/// <param name="Last">Last day.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">What it is expected to be.</param>
/// <param name="Tiers">The price curve of a week, cheapest first.</param>
public sealed record OfferTerms(string Code, string WheatClass, LocalDate First, LocalDate Last, double MoisturePercent, IReadOnlyList<QualityTerms> Quality, IReadOnlyList<TierTerms> Tiers)
{
    /// <summary>Whose it is, in words.</summary>
    public string From { get; init; } = "";

    /// <summary>How much of it there is in all, t; null for no limit but the tiers'.</summary>
    public double? TotalTonnes { get; init; }
}

/// <summary>One step of a price curve.</summary>
/// <param name="TonnesPerWeek">Up to so much in a week at this price, t, above 0.</param>
/// <param name="PricePerTonne">Money per t, delivered.</param>
public sealed record TierTerms(double TonnesPerWeek, double PricePerTonne);
