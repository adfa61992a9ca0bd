using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory;

/// <summary>What went into and out of places within spans of time, and where most of it went. Each place's movements are put in order once, so that one may ask for many spans.</summary>
/// <param name="book">The ledger; it is not to grow meanwhile.</param>
public sealed class PlaceFlows(Book book)
{
    private readonly Dictionary<PlaceId, (Movement[] ByBeginning, Duration Longest)> known = [];

    /// <summary>The movements at a place of which anything falls into a span, by when they began.</summary>
    /// <param name="place">At either end of them.</param>
    /// <param name="from">Beginning of the span.</param>
    /// <param name="until">Its end, left out.</param>
    public IEnumerable<Movement> Within(PlaceId place, Instant from, Instant until)
    {
        if (!known.TryGetValue(place, out var all))
        {
            Movement[] sorted = [.. book.MovementsOf(place).Select(m => book.Movements[m]).Where(m => m.Mass > Quantities.Mass.Zero).Order()];
            all = known[place] = (sorted, sorted.Length == 0 ? Duration.Zero : sorted.Max(m => m.Until - m.At));
        }

        return all.ByBeginning.Skip(FirstFrom(all.ByBeginning, from - all.Longest)).TakeWhile(m => m.At < until).Where(m => m.TonnesWithin(from, until) > 0);
    }

    /// <summary>The place that most of what left another within a span went to; null where nothing left it.</summary>
    /// <param name="place">The place it left.</param>
    /// <param name="from">Beginning of the span.</param>
    /// <param name="until">Its end, left out.</param>
    public PlaceId? MostGoesTo(PlaceId place, Instant from, Instant until) =>
        Within(place, from, until).Where(m => m.From == place).GroupBy(m => m.To).OrderByDescending(g => g.Sum(m => m.TonnesWithin(from, until))).Select(g => (PlaceId?)g.Key).FirstOrDefault();

    private static int FirstFrom(Movement[] sorted, Instant from)
    {
        var (low, high) = (0, sorted.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = sorted[middle].At < from ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
