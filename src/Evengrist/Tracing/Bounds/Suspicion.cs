using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing.Bounds;

/// <summary>What is suspect from the start on: what leaves a place in a span, or what is loaded into a unit in it.</summary>
/// <param name="Place">The place.</param>
/// <param name="From">From this moment on; null for no lower limit.</param>
/// <param name="Until">Before this moment; null for no upper limit.</param>
public sealed record Suspicion(Place Place, Instant? From = null, Instant? Until = null)
{
    /// <summary>Whether it marks what comes to the place, not what leaves it.</summary>
    internal bool IsLoad => Place.Kind.Role() == PlaceRole.Unit;

    internal long Begins => From?.ToMicros() ?? long.MinValue;

    internal long Ends => Until?.ToMicros() ?? long.MaxValue;

    // A source or unit gives whole movements, by the moment they began; a place of the plant what flows within the span.
    internal bool Marks(Carried flow, long now, long next) => Place.Kind.Role() is PlaceRole.Unit or PlaceRole.Source
        ? (IsLoad ? flow.To : flow.From) == Place.Id.Value && flow.At >= Begins && flow.At < Ends
        : flow.From == Place.Id.Value && now >= Begins && (now == next ? now < Ends : next <= Ends);
}
