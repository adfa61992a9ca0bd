using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>Something the recall does not know and a person has to find out.</summary>
/// <param name="Kind">What sort of gap.</param>
/// <param name="Place">The place it is about; null where it is about no single one.</param>
/// <param name="Grams">Grams it is about, where a figure says how much; null where none does.</param>
/// <param name="Others">Other places it names: where rework went, for example.</param>
public sealed record StillUnknown(UnknownKind Kind, Place? Place, double? Grams, IReadOnlyList<Place> Others)
{
    /// <summary>When it began; null where it is about no time.</summary>
    public Instant? From { get; init; }

    /// <summary>When it ended; null where it is about a moment, or about no time.</summary>
    public Instant? Until { get; init; }
}
