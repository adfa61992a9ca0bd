using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>A standard deviation of a property.</summary>
/// <param name="What">The property.</param>
/// <param name="Spread">In its usual unit, 0 or more.</param>
public sealed record PropertySpread(Property What, double Spread);
