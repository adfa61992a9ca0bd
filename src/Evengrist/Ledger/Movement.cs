using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact: grams went from a place to a place, at one moment or evenly over a span of time.</summary>
/// <param name="Id">The number of the fact.</param>
/// <param name="From">Where it left.</param>
/// <param name="To">Where it went.</param>
/// <param name="Mass">How much, as it lay; above zero (zero only in a correction that voids).</param>
/// <param name="At">When it began.</param>
/// <param name="Until">When it ended; the same as <paramref name="At"/> for a load set down at once. The rate between is even.</param>
public readonly record struct Movement(FactId Id, PlaceId From, PlaceId To, Mass Mass, Instant At, Instant Until)
{
    /// <summary>Whether it lasted: a flow, not a load set down at once.</summary>
    public bool IsFlow => Until > At;
}
