namespace Evengrist.Season;

/// <summary>What a plan costs, by kind, in the money of the plan. What lies in store at the start and what is contracted already costs nothing here: it is spent.</summary>
/// <param name="Purchases">Wheat bought.</param>
/// <param name="Storage">Keeping wheat and flour.</param>
/// <param name="Relief">Relaxations bought from customers.</param>
/// <param name="Misses">What misses are taken to cost.</param>
/// <param name="Unmet">What flour that is not made is taken to cost.</param>
/// <param name="ByProducts">What by-products bring; 0 or more, taken off.</param>
/// <param name="EndValue">What wheat left at the end is worth; taken off.</param>
public sealed record SeasonCosts(double Purchases, double Storage, double Relief, double Misses, double Unmet, double ByProducts, double EndValue)
{
    /// <summary>All of it: what the plan makes as small as it can.</summary>
    public double Total => Purchases + Storage + Relief + Misses + Unmet - ByProducts - EndValue;
}
