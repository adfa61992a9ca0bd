using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Intake.Carrying;

/// <summary>The last grain that went through a pit or leg.</summary>
/// <param name="Through">The pit or leg.</param>
/// <param name="Truck">The truck it came from.</param>
/// <param name="At">When it went through.</param>
/// <param name="Swept">When the place was cleaned out since; null where it was not.</param>
public sealed record LastGrain(Place Through, Place Truck, Instant At, Instant? Swept)
{
    /// <summary>The last truck tipped into a pit before a moment; null where there was none.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="pit">A place that trucks are tipped into.</param>
    /// <param name="before">The moment.</param>
    /// <param name="except">A truck that does not count: the one that is asked about.</param>
    public static LastGrain? Before(Book book, Place pit, Instant before, Place except)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(pit);
        ArgumentNullException.ThrowIfNull(except);
        Movement? last = null;
        foreach (var index in book.MovementsOf(pit.Id))
        {
            var movement = book.Movements[index];
            if (movement.To == pit.Id && movement.From != except.Id && movement.At < before && movement.Mass.Grams > 0 && book[movement.From].Kind == PlaceKind.Truck
                && (last is not { } best || movement.At >= best.At))
            {
                last = movement;
            }
        }

        return last is not { } through ? null
            : new(pit, book[through.From], through.At, book.HappeningsOn(pit.Id).Where(h => h.Kind == HappeningKind.Swept && h.At >= through.At && h.At <= before).Select(h => (Instant?)h.At).FirstOrDefault());
    }
}
