namespace Evengrist.Intake.Sampling;

/// <summary>A reading set against edges.</summary>
/// <param name="Read">The value read, in its unit and basis.</param>
/// <param name="StandardDeviation">Its combined standard deviation, sampling and instrument together; above 0.</param>
/// <param name="Edges">The edges, in any order.</param>
public sealed record EdgeSpec(double Read, double StandardDeviation, IReadOnlyList<Edge> Edges)
{
    /// <summary>From which chance on an edge counts as settled: the site's policy, between 0.5 and 1.</summary>
    public double SureFrom { get; init; } = 0.8;

    /// <summary>Probes in the sample that was read, at least 1.</summary>
    public int Probes { get; init; } = 1;

    /// <summary>s_b/√n, what the probes contribute to the standard deviation; null where it is not known. Then a further probe is taken to be a further whole sample, tested by itself.</summary>
    public double? FromProbes { get; init; }

    /// <summary>Edges further from the reading than so many standard deviations are left out; above 0.</summary>
    public double Within { get; init; } = 3;

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        double.IsFinite(Read) ? null : "The reading is no number.",
        StandardDeviation > 0 && double.IsFinite(StandardDeviation) ? null : "The standard deviation is above 0: without it no chance can be told.",
        SureFrom is > 0.5 and < 1 ? null : "The chance that settles an edge lies between 0.5 and 1.",
        Probes >= 1 ? null : "At least one probe was taken.",
        FromProbes is null or >= 0 && (FromProbes ?? 0) <= StandardDeviation ? null : "What the probes contribute is at least 0 and no more than the whole standard deviation.",
        Within > 0 ? null : "The reach is above 0.",
    }.OfType<string>()];
}
