using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Streams.Additions;

/// <summary>What is left of one lot of an additive: what was found of it last, less what the ledger has fed since. Page: docs/model/additions.md.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Found">The delivery or count it rests on; null where none was recorded.</param>
/// <param name="FedSince">Fed since then, or in all where nothing was found, kg.</param>
/// <param name="LastFed">When it was fed last; null where it never was.</param>
public sealed record LotStock(Place Lot, Reading? Found, double FedSince, Instant? LastFed)
{
    /// <summary>What is left, kg; below 0 where more was fed than was found; null where nothing was found.</summary>
    public double? LeftKilograms => Found is { } found ? ((double)found.Value * 1000) - FedSince : null;

    /// <summary>One standard uncertainty of it, kg: that of what was found; null where it has none.</summary>
    public double? StandardUncertainty => (double?)Found?.StandardUncertainty * 1000;

    /// <summary>Whether more was fed than was found: a lot or a count is wrong.</summary>
    public bool IsShort => LeftKilograms < 0;
}
