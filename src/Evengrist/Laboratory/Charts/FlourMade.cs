using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Charts;

/// <summary>Which flour a mill unit makes most of at a moment, by the ledger: from the unit on with the largest flow until a flour bin. A chart of a unit is of one flour.</summary>
/// <param name="book">The ledger.</param>
public sealed class FlourMade(Book book)
{
    private const int MostSteps = 4;
    private readonly Dictionary<PlaceId, (Movement[] Flows, Duration Longest)> flows = [];

    /// <summary>The material of the flour bin reached; empty where nothing flowed, or no flour bin was reached.</summary>
    public string At(PlaceId unit, Instant at)
    {
        var place = unit;
        for (var step = 0; step < MostSteps; step++)
        {
            if (MostGoesTo(place, at) is not { } next)
            {
                return "";
            }

            if (book[next].Kind == PlaceKind.FlourBin)
            {
                return book[next].Material;
            }

            place = next;
        }

        return "";
    }

    private PlaceId? MostGoesTo(PlaceId place, Instant at)
    {
        if (!flows.TryGetValue(place, out var known))
        {
            Movement[] found = [.. book.MovementsOf(place).Select(m => book.Movements[m]).Where(m => m.From == place && m.IsFlow && m.Mass > Quantities.Mass.Zero).OrderBy(m => m.At)];
            known = flows[place] = (found, found.Length == 0 ? Duration.Zero : found.Max(m => m.Until - m.At));
        }

        var first = FirstFrom(known.Flows, at - known.Longest);
        return known.Flows.Skip(first).TakeWhile(m => m.At <= at).Where(m => m.Until > at).GroupBy(m => m.To)
            .OrderByDescending(g => g.Sum(m => m.Mass.Grams / (m.Until - m.At).TotalHours)).Select(g => (PlaceId?)g.Key).FirstOrDefault();
    }

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
