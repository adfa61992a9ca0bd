using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>Edges by which a house keeps wheat apart, such as protein 12.5 | 13.0 | 13.5.</summary>
/// <param name="Class">The wheat class it is for; empty for any.</param>
/// <param name="What">The property.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its basis; none for a property without.</param>
/// <param name="Edges">Rising; at least one. At or above an edge the upper band counts.</param>
public sealed record HouseBand(string Class, Property What, string Unit, Basis Basis, IReadOnlyList<decimal> Edges)
{
    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => Edges.Count == 0 ? [$"The band of {What.Words()} has no edge."]
        : !Edges.SequenceEqual(Edges.Order().Distinct()) ? [$"The edges of the band of {What.Words()} rise, each once."]
        : [.. Edges.Select(e => Readings.Fault(What, e, Unit, Basis)).OfType<string>().Take(1)];
}
