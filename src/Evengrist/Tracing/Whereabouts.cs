using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>How much of what was traced forward is where at the moment asked; over all of them each hypothesis sums to what was traced.</summary>
/// <param name="Words">Where, in words: <c>in bins and machines</c>, <c>packed, in stock</c>, <c>with customers</c>, <c>loss and waste</c>.</param>
/// <param name="Place">The one place, where it is one; null for a sum over packages.</param>
/// <param name="Grams">How much of the thing itself, as it went in.</param>
public sealed record Whereabouts(string Words, Place? Place, Spread Grams);
