namespace Evengrist.Season.Lots;

/// <summary>A lot of wheat that somebody offers: what is it worth to the rest of the crop year?</summary>
/// <remarks>Model: docs/model/offered-lot.md.</remarks>
/// <param name="Wheat">What it is said to be; its opening and deliveries are not looked at. The spread of a value is what that may be off by.</param>
/// <param name="Tonnes">How much is offered, t as it lies, above 0.</param>
/// <param name="Period">Number of the period, from 0, in which it would be there.</param>
public sealed record LotSpec(SeasonWheat Wheat, double Tonnes, int Period)
{
    /// <summary>What is asked for it, money per t, delivered; null where no price was named.</summary>
    public double? AskedPerTonne { get; init; }
}
