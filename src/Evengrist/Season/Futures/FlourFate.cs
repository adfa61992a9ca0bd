using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>How long a flour stayed on target in one future.</summary>
/// <param name="Off">Number of the first period in which it truly was off target: not made in full, or off a limit by more than is tolerated; the number of periods where it never was.</param>
/// <param name="Limiting">The property that was then furthest off, measured by what a miss costs; null where flour was not made in full or nothing was off.</param>
/// <param name="BelievedOff">The same as it looked by the readings.</param>
public sealed record FlourFate(int Off, Property? Limiting, int BelievedOff);
