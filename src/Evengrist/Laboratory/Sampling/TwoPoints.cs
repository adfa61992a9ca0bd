namespace Evengrist.Laboratory.Sampling;

/// <summary>Two points that an operating curve must keep.</summary>
/// <param name="GoodShare">Share of bad ones, or content, of a lot that should pass.</param>
/// <param name="SellersRisk">α, chance that it is rejected.</param>
/// <param name="BadShare">Of a lot that should not pass; above the good one.</param>
/// <param name="BuyersRisk">β, chance that it is accepted.</param>
public sealed record TwoPoints(double GoodShare, double SellersRisk, double BadShare, double BuyersRisk)
{
    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. GoodShare > 0 && BadShare > GoodShare && BadShare < 1 ? Array.Empty<string>() : ["The good share is above 0, the bad share above the good one and below 1: write 1 % as 0.01."],
        .. SellersRisk > 0 && BuyersRisk > 0 && SellersRisk + BuyersRisk < 1 ? Array.Empty<string>() : ["Both risks are above 0 and together below 1: 5 % and 10 % are usual."],
    ];

    internal void Check()
    {
        if (Faults() is { Count: > 0 } faults)
        {
            throw new InvalidOperationException(string.Join(" ", faults));
        }
    }
}
