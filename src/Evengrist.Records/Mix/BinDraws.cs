using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>Wheat that went from bins into mix lines, as the ledger has it: the way a gate's tonnes are read wherever they are asked for.</summary>
internal static class BinDraws
{
    /// <summary>Movements that count from a bin into a mix line and that touch a place and a stretch of time.</summary>
    public static IEnumerable<Movement> Of(Book book, PlaceId place, Instant from, Instant to)
    {
        foreach (var i in book.MovementsOf(place))
        {
            var movement = book.Movements[i];
            if (movement.At < to && (movement.Until > from || movement.At >= from) && book.Counts(i) && book[movement.From].Kind == PlaceKind.Bin && book[movement.To].Kind == PlaceKind.MixLine)
            {
                yield return movement;
            }
        }
    }
}
