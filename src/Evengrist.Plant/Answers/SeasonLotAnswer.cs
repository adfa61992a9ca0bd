using Evengrist.Season.Lots;

namespace Evengrist.Plant.Answers;

/// <summary>What an offered lot is worth to the rest of a crop year, money of the season.</summary>
/// <param name="Tonnes">The lot, t.</param>
/// <param name="Period">Number of the period in which it would be there.</param>
/// <param name="FirstPerTonne">What its first t is worth, from the duals.</param>
/// <param name="VerifiedPerTonne">What its first tonnes are worth each, by the year solved again.</param>
/// <param name="VerifiedTonnes">With so many of them, t.</param>
/// <param name="LowerPerTonne">What the first t is worth at one spread of protein less; null without a spread.</param>
/// <param name="HigherPerTonne">The same at one spread more.</param>
/// <param name="Worth">What the whole lot is worth.</param>
/// <param name="MostPerTonne">The most to pay for a t of it, the whole lot taken.</param>
/// <param name="Curve">From nothing up to the whole lot.</param>
/// <param name="Uses">Where it would go.</param>
/// <param name="LeftTonnes">How much of it would be left at the end, t.</param>
/// <param name="Replaced">What would be used, bought or left otherwise.</param>
/// <param name="AtPrice">How much of it pays at the price asked; null where none was named.</param>
public sealed record SeasonLotAnswer(
    double Tonnes, int Period, double FirstPerTonne, double VerifiedPerTonne, double VerifiedTonnes, double? LowerPerTonne, double? HigherPerTonne, double Worth, double MostPerTonne,
    IReadOnlyList<SeasonLotPoint> Curve, IReadOnlyList<LotUse> Uses, double LeftTonnes, IReadOnlyList<LotReplaced> Replaced, LotAtPrice? AtPrice)
{
    internal static SeasonLotAnswer Of(LotWorth lot) => new(
        lot.Lot.Tonnes, lot.Lot.Period, lot.First.PerTonne, lot.Verified.PerTonne, lot.Verified.Tonnes, lot.Spread?.Lower, lot.Spread?.Higher, lot.Curve[^1].Worth, lot.MostPerTonne,
        [.. lot.Curve.Select(p => new SeasonLotPoint(p.Tonnes, p.Worth, p.PerTonne, p.NextPerTonne))], lot.Uses, lot.LeftTonnes, lot.Replaced, lot.AtPrice);
}

/// <summary>A part of a lot: what it is worth in all, on the mean of its tonnes, and what one more t is worth then.</summary>
public sealed record SeasonLotPoint(double Tonnes, double Worth, double PerTonne, double NextPerTonne);
