using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>A recall answered.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="AsOf">The moment looked back from.</param>
/// <param name="Beliefs">The hypotheses with their weights.</param>
/// <param name="Traced">How much is suspect, each gram once, under each hypothesis.</param>
/// <param name="Bound">The same under any outflow.</param>
/// <param name="Packages">Every package of the wide net, by when it was made.</param>
/// <param name="Where">Where it is; each hypothesis sums to <paramref name="Traced"/>.</param>
/// <param name="Nets">The wide net, the cautious union, the narrow net.</param>
/// <param name="Curve">The narrow net at every chance at which it changes, the narrowest first.</param>
/// <param name="Passages">Places gone through, by time, under the first hypothesis.</param>
/// <param name="Unknown">What is still unknown.</param>
/// <param name="Nothing">Why there is nothing to recall, in a sentence; null where there is.</param>
public sealed record RecallOutcome(
    RecallQuestion Question, Instant AsOf, IReadOnlyList<Belief> Beliefs, Spread Traced, Bound Bound, IReadOnlyList<RecallPackage> Packages, IReadOnlyList<RecallWhere> Where,
    IReadOnlyList<Net> Nets, IReadOnlyList<NetPoint> Curve, IReadOnlyList<Passage> Passages, IReadOnlyList<StillUnknown> Unknown, string? Nothing)
{
    /// <summary>Places of the plant it can have been in under any outflow, and when; by number.</summary>
    public IReadOnlyList<Stay> Stays { get; init; } = [];

    /// <summary>Share of what was traced that is accounted for, under each hypothesis.</summary>
    public IReadOnlyList<double> AccountedFor => Beliefs.Select((_, h) => Traced.Each[h] > 0 ? Where.Sum(w => w.Grams.Each[h]) / Traced.Each[h] : 1).ToArray();

    /// <summary>A net of a kind.</summary>
    /// <exception cref="InvalidOperationException">Nothing was traced, so there is none.</exception>
    public Net Net(NetKind kind) => Nets.First(n => n.Kind == kind);
}
