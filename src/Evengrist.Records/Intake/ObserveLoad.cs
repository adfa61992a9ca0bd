using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>What was smelt and seen on a load at the probe.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Key">The sender's own key within the ticket: the same key again is the same observation.</param>
/// <param name="Signs">In the words of <see cref="LoadSigns"/>; none for looked, and nothing there.</param>
public sealed record ObserveLoad(string Ticket, string Key, IReadOnlyList<string> Signs)
{
    /// <summary>What an observation says where nothing was found.</summary>
    public const string NothingFound = "looked and smelt: nothing amiss";

    /// <summary>When; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">A sign is not known, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var truck = OnTicket.Truck(view.Book, Ticket);
                if (Signs.FirstOrDefault(s => LoadSigns.Find(s) is null) is { } strange)
                {
                    throw OnTicket.Refusal(truck, $"was given \"{strange}\", which is nothing that can be seen on a load. Choose from: {string.Join(", ", LoadSigns.All.Select(s => s.Words))}.");
                }

                var words = Signs.Count == 0 ? NothingFound : string.Join(", ", Signs.Select(s => LoadSigns.Find(s)!.Words).Distinct());
                return [OnTicket.Said(view.Book, truck, $"observed {Key}", HappeningKind.Observed, words, At, now)];
            },
            by, OnTicket.Source, provided: SeenTicket.Unchanged(Ticket, Seen));
    }
}
