namespace Evengrist.Season.Lots;

/// <summary>What comes of asking what a lot is worth.</summary>
public abstract record LotOutcome;

/// <summary>There is no answer: bad input, a year whose demands clash, or a failure.</summary>
/// <param name="Why">As the planner names it.</param>
public sealed record LotNotWorthed(SeasonOutcome Why) : LotOutcome;

/// <summary>What a lot is worth to the rest of the crop year.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Currency">Of the money.</param>
/// <param name="First">What its first t is worth, from the duals of the year without it, and where.</param>
/// <param name="Verified">What its first tonnes are worth each by the year solved again with them.</param>
/// <param name="Spread">What the first t is worth where its protein is one spread lower and one higher; null where protein carries no spread.</param>
/// <param name="Curve">From nothing up to the whole lot.</param>
/// <param name="Uses">Where the whole lot would go, most first.</param>
/// <param name="LeftTonnes">How much of it would be left at the end, t.</param>
/// <param name="Replaced">What would be used, bought or left otherwise, largest change first.</param>
/// <param name="AtPrice">What to buy of it at the price asked; null where none was named.</param>
public sealed record LotWorth(
    LotSpec Lot, string Currency, TonneWorth First, LotPoint Verified, (double Lower, double Higher)? Spread, IReadOnlyList<LotPoint> Curve, IReadOnlyList<LotUse> Uses, double LeftTonnes,
    IReadOnlyList<LotReplaced> Replaced, LotAtPrice? AtPrice) : LotOutcome
{
    /// <summary>The most to pay for a t of the whole lot, taken or left as one: its worth over its tonnes. Money per t.</summary>
    public double MostPerTonne => Curve[^1].PerTonne;
}

/// <summary>A part of a lot.</summary>
/// <param name="Tonnes">How much of it, t.</param>
/// <param name="Worth">By how much the year is cheaper with it, its own price left out, money.</param>
/// <param name="NextPerTonne">What one more t is worth then, money per t.</param>
public sealed record LotPoint(double Tonnes, double Worth, double NextPerTonne)
{
    /// <summary>What a t of it is worth on the mean, money per t; that of the next one where there is none yet.</summary>
    public double PerTonne => Tonnes > 0 ? Worth / Tonnes : NextPerTonne;
}

/// <summary>A flour that would take some of a lot.</summary>
/// <param name="Flour">Its code.</param>
/// <param name="Tonnes">t of the lot.</param>
/// <param name="First">Number of the first period in which.</param>
/// <param name="Last">Number of the last one.</param>
public sealed record LotUse(string Flour, double Tonnes, int First, int Last);

/// <summary>What a lot does to another wheat; each below 0 where there is less of it.</summary>
/// <param name="Wheat">Code of the wheat or offer.</param>
/// <param name="DrawnTonnes">More drawn over the year, t.</param>
/// <param name="BoughtTonnes">More bought, t.</param>
/// <param name="LeftTonnes">More left at the end, t.</param>
public sealed record LotReplaced(string Wheat, double DrawnTonnes, double BoughtTonnes, double LeftTonnes);

/// <summary>What to buy of a lot at a price, were it not taken or left as one.</summary>
/// <param name="Tonnes">How much pays, t.</param>
/// <param name="Saves">By how much the year is cheaper then, the price paid, money.</param>
/// <param name="WholeSaves">The same for the whole lot; below 0 where it is dearer.</param>
public sealed record LotAtPrice(double Tonnes, double Saves, double WholeSaves);
