using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>What something has reached.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Place">The place asked about.</param>
/// <param name="AsOf">The moment looked back from.</param>
/// <param name="Beliefs">The hypotheses asked, with their weights.</param>
/// <param name="Grams">How much was traced, under each hypothesis.</param>
/// <param name="Packages">Packages reached at or above the threshold under any hypothesis (the union), by code.</param>
/// <param name="Counts">Packages above the threshold under each hypothesis, in the order of the beliefs.</param>
/// <param name="UnionCount">Packages above the threshold under any hypothesis.</param>
/// <param name="AllCounts">Packages reached at all under each hypothesis.</param>
/// <param name="Where">Where it is now; sums to <paramref name="Grams"/>.</param>
/// <param name="Passages">Places gone through, by time, with the highest share seen there.</param>
/// <param name="Links">The flow between them.</param>
/// <param name="Nothing">Why there is nothing to trace, in a sentence; null where there is.</param>
public sealed record ReachOutcome(
    TraceQuestion Question, Place Place, Instant AsOf, IReadOnlyList<Belief> Beliefs, Spread Grams, IReadOnlyList<Reached> Packages,
    IReadOnlyList<int> Counts, int UnionCount, IReadOnlyList<int> AllCounts, IReadOnlyList<Whereabouts> Where,
    IReadOnlyList<Passage> Passages, IReadOnlyList<Link> Links, string? Nothing)
{
    /// <summary>Share of what was traced that is accounted for, under each hypothesis; 1 when the trace is complete.</summary>
    public IReadOnlyList<double> AccountedFor => Beliefs.Select((_, i) => Grams.Each[i] > 0 ? Where.Sum(w => w.Grams.Each[i]) / Grams.Each[i] : 1).ToArray();
}
