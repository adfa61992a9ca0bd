using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>How far an outflow hypothesis is believed.</summary>
/// <param name="Outflow">The hypothesis.</param>
/// <param name="Weight">Its weight; at least 0. Weights need not sum to one: they are taken in proportion.</param>
public sealed record Belief(Outflow Outflow, double Weight)
{
    /// <summary>First in first out 0.7, core first 0.2, stirred 0.1: an assumption of ours until the site has made its own tracer trial.</summary>
    public static IReadOnlyList<Belief> Usual { get; } =
        [new(Outflow.FirstInFirstOut, 0.7), new(Outflow.CoreFirst, 0.2), new(Outflow.Stirred, 0.1)];
}
