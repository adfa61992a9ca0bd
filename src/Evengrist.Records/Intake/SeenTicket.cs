using Evengrist.Intake;
using Evengrist.Ledger;

namespace Evengrist.Records.Intake;

/// <summary>A ticket as somebody saw it before changing it.</summary>
public static class SeenTicket
{
    /// <summary>A look, before anything is recorded, whether the ticket still stands as it was seen; refuses where somebody else has changed it since.</summary>
    /// <param name="ticket">The ticket.</param>
    /// <param name="seen">Number of the newest fact that was seen on it; null where nobody looked.</param>
    public static Action<MillView> Unchanged(string ticket, FactId? seen) => view =>
    {
        if (seen is { } before && LoadWay.Newest(view.Book, OnTicket.Truck(view.Book, ticket)) is var newest && newest > before)
        {
            throw new LedgerRefusal(LedgerRule.ChangedMeanwhile,
                $"Ticket {ticket} was changed since you looked: it stands at {newest} and you had seen it up to {before}. Nothing of yours was recorded; look at what changed, then record again.") { Place = ticket };
        }
    };
}
