namespace Evengrist.Intake.Sampling;

/// <summary>What to do about the edges near a reading.</summary>
public abstract record EdgeAdvice
{
    /// <summary>The advice for a set of doubts: probe again where an edge is not settled and some probes would settle it.</summary>
    /// <param name="doubts">As <see cref="EdgeModel.Doubts"/> gives them.</param>
    public static EdgeAdvice Of(IReadOnlyList<EdgeDoubt> doubts)
    {
        ArgumentNullException.ThrowIfNull(doubts);
        var open = doubts.Where(d => !d.Settled).ToArray();
        return open.Length == 0 ? new TakeTheBand()
            : open.All(d => d.MoreProbes is null) ? new NoProbeSettles(open[0])
            : new ProbeAgain(open.Max(d => d.MoreProbes) ?? 1, open.MinBy(d => d.ChanceRightSide)!);
    }
}

/// <summary>Every edge within reach is settled: price and bin go by the reading.</summary>
public sealed record TakeTheBand : EdgeAdvice;

/// <summary>Take further probes before price or bin hangs on the reading.</summary>
/// <param name="More">How many would settle every edge that probes can settle, if their mean stays where the reading is.</param>
/// <param name="Because">The least sure edge.</param>
public sealed record ProbeAgain(int More, EdgeDoubt Because) : EdgeAdvice;

/// <summary>The reading lies so near the edge that no practical number of probes settles it: agree by contract or policy how such a load is taken.</summary>
/// <param name="Because">The least sure edge.</param>
public sealed record NoProbeSettles(EdgeDoubt Because) : EdgeAdvice;
