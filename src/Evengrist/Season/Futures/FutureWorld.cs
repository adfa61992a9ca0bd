namespace Evengrist.Season.Futures;

/// <summary>Everything that befalls the mill in one future; the mill learns of it period by period.</summary>
/// <param name="Lots">What lies there at the start and what comes, for each wheat in the order in which it leaves.</param>
/// <param name="Offered">What an offer brings if it is bought, by number of the offer and period; null where it is not on offer.</param>
/// <param name="Demand">Flour wanted, t, by number of the flour and period.</param>
public sealed record FutureWorld(IReadOnlyList<FutureLot> Lots, IReadOnlyList<IReadOnlyList<FutureLot?>> Offered, IReadOnlyList<IReadOnlyList<double>> Demand);
