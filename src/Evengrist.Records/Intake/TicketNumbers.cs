using Evengrist.Intake;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>Gives ticket numbers. Asked under the mill's lock, so that no number is given twice and none is left out.</summary>
internal static class TicketNumbers
{
    private const int Last = 999;

    /// <summary>The ticket that a station has opened on a day under a key, or else the lowest number of the day that is free.</summary>
    /// <exception cref="LedgerRefusal">All numbers of the day are taken.</exception>
    public static (TicketNumber Number, Place? Opened) For(Book book, LocalDate day, string station, string key)
    {
        for (var n = 1; n <= Last; n++)
        {
            var number = TicketNumber.Of(day, n);
            if (book.Find(number.ToString()) is not { } place)
            {
                // Every number given before lies below the lowest free one: the key has opened none.
                return (number, null);
            }

            if (Arrival.Of(book, place) is { } arrival && arrival.Key == key && arrival.Station.Equals(station, StringComparison.OrdinalIgnoreCase))
            {
                return (number, place);
            }
        }

        throw new LedgerRefusal(LedgerRule.Malformed, $"All {Last} ticket numbers of {day} are taken. Write further trucks on the next milling day.");
    }
}
