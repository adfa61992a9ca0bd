using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>The chance that a flour is on target through a period.</summary>
/// <param name="Period">Number of the period, from 0.</param>
/// <param name="Probability">Share of futures in which it was on target from the start through this period.</param>
/// <param name="StandardError">√(p·(1 − p)/n): what the number of futures leaves open; it says nothing of spreads that were given wrongly.</param>
public sealed record PromisePoint(int Period, double Probability, double StandardError);

/// <summary>What ended a flour's time on target, and in which share of the futures that ended it.</summary>
/// <param name="What">The property that was off; null where flour was not made in full.</param>
/// <param name="Share">0 to 1.</param>
public sealed record PromiseEnd(Property? What, double Share);

/// <summary>What can be promised of a flour.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Points">One for every period.</param>
/// <param name="Early">Number of the period before which it is off target in one future of twenty; null where it lasts to the end of the plan.</param>
/// <param name="Middle">The same in one of two.</param>
/// <param name="Late">The same in nineteen of twenty.</param>
/// <param name="Ends">What ended it, most frequent first; none where it never was off target.</param>
/// <param name="Through">Number of the last period through which it is on target with the stated probability or a higher one; −1 for none.</param>
public sealed record FlourPromise(string Flour, IReadOnlyList<PromisePoint> Points, int? Early, int? Middle, int? Late, IReadOnlyList<PromiseEnd> Ends, int Through)
{
    /// <summary>What ended it most often; null for none.</summary>
    public PromiseEnd? Limiting => Ends.Count > 0 ? Ends[0] : null;
}
