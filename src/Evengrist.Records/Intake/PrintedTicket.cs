using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A ticket as it is printed, with what the papers of the scale house say against paying by it.</summary>
public static class PrintedTicket
{
    /// <summary>The sheet of a ticket as of a moment; null where there is no such ticket by then.</summary>
    public static TicketSheet? Of(Mill mill, string ticket, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (shelf, settings) = (TradeShelf.Of(mill), mill.Settings);
        return mill.Ask(view =>
        {
            if (view.Book.Find(ticket) is not { Kind: PlaceKind.Truck } truck
                || TicketSheet.Of(view.Book, truck, at, shelf.Terms.Find, moment => MillingDay.Of(moment, settings.Zone, settings.DayStart)) is not { } sheet)
            {
                return null;
            }

            var against = shelf.Reader(view, at).Look(truck)?.NotForSettlement() ?? [];
            return against.Count == 0 ? sheet : sheet with { NotForSettlement = string.Join(" ", against) };
        });
    }
}
