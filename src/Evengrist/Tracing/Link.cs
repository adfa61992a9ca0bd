using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>How much of what was traced went from one place to the next that reckoning tells apart; for a picture of the flow.</summary>
/// <param name="From">Where it came from.</param>
/// <param name="To">Where it went.</param>
/// <param name="Grams">How much, under the first hypothesis.</param>
public sealed record Link(Place From, Place To, double Grams);
