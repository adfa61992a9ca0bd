using Evengrist.Ledger;

namespace Evengrist.Records.Browsing;

/// <summary>A fact with who recorded it, and what became of it.</summary>
/// <param name="Sort">What sort of fact.</param>
/// <param name="Fact">The fact, attribution included.</param>
/// <param name="CorrectedBy">The later fact that stands in for this one; null while it counts.</param>
public sealed record FactLine(FactSort Sort, Fact Fact, FactId? CorrectedBy)
{
    /// <summary>Whether it still counts.</summary>
    public bool Counts => CorrectedBy is null;
}
