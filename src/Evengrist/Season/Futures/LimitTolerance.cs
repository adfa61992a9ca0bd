using Evengrist.Ledger;

namespace Evengrist.Season.Futures;

/// <summary>By how much a flour may truly be off a limit and still count as on target.</summary>
/// <param name="What">The property.</param>
/// <param name="By">In its usual unit and on the basis of the limit, 0 or more.</param>
public sealed record LimitTolerance(Property What, double By);
