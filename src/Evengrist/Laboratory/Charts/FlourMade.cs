using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Charts;

/// <summary>Which flour a mill unit makes most of at a moment, by the ledger: from the unit on with the largest flow until a flour bin. A chart of a unit is of one flour.</summary>
/// <param name="book">The ledger.</param>
public sealed class FlourMade(Book book)
{
    private const int MostSteps = 4;

    // A microsecond, the grain of the ledger's times.
    private static readonly Duration Moment = Duration.FromTicks(10);
    private readonly PlaceFlows flows = new(book);

    /// <summary>The material of the flour bin reached; empty where nothing flowed, or no flour bin was reached.</summary>
    public string At(PlaceId unit, Instant at)
    {
        var place = unit;
        for (var step = 0; step < MostSteps; step++)
        {
            if (flows.MostGoesTo(place, at, at + Moment) is not { } next)
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
}
