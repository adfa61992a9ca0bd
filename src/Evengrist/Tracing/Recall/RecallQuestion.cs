using Evengrist.Quantities;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>What is to be recalled, and how wide.</summary>
/// <param name="Starts">What is suspect from the start on; several are joined.</param>
public sealed record RecallQuestion(IReadOnlyList<Suspicion> Starts)
{
    /// <summary>The moment looked back from; null for the newest in the ledger.</summary>
    public Instant? AsOf { get; init; }

    /// <summary>A package counts for the narrow net when it holds more than this.</summary>
    public Mass Threshold { get; init; } = Mass.Zero;

    /// <summary>And when the belief that it does is at least this; 0 to 1. At 0 one hypothesis is enough: the cautious union.</summary>
    public double Chance { get; init; }

    /// <summary>What is taken for known by the bounds.</summary>
    public BoundsOptions Bounds { get; init; } = new();
}
