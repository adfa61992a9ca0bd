using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Where something came from.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Place">The place asked about.</param>
/// <param name="AsOf">The moment looked back from.</param>
/// <param name="Beliefs">The hypotheses asked, with their weights.</param>
/// <param name="Grams">How much was traced, under each hypothesis.</param>
/// <param name="Roots">Origins, the largest expected share first.</param>
/// <param name="Passages">Places gone through, by time.</param>
/// <param name="Links">The flow between them.</param>
/// <param name="LeftOut">Share left out as too small to follow (below 10⁻⁹ of the whole in any parcel), the most under any hypothesis.</param>
/// <param name="Nothing">Why there is nothing to trace, in a sentence; null where there is.</param>
public sealed record RootsOutcome(
    TraceQuestion Question, Place Place, Instant AsOf, IReadOnlyList<Belief> Beliefs, Spread Grams, IReadOnlyList<Root> Roots,
    IReadOnlyList<Passage> Passages, IReadOnlyList<Link> Links, double LeftOut, string? Nothing);
