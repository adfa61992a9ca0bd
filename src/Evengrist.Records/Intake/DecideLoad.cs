using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A named person decides where a load goes: to a bin, aside, or away again.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Key">The sender's own key of the decision within the ticket.</param>
/// <param name="Decision">What was decided.</param>
/// <param name="Why">Why, in the person's words; demanded unless the load is accepted.</param>
public sealed record DecideLoad(string Ticket, string Key, LoadDecision Decision, string Why = "")
{
    /// <summary>When; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>What the rules advised when it was decided; null where nobody asked them.</summary>
    public LoadAdvice? Advice { get; init; }

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records the decision. The same one sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">It cannot be sent there, no reason is given, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view =>
            {
                var truck = OnTicket.Truck(view.Book, Ticket);
                var said = Decision with { Key = Key, Bin = view.Book.Find(Decision.Bin)?.Code ?? Decision.Bin, Way = [.. (Decision.Way ?? []).Select(c => view.Book.Named(c).Code)] };
                return [OnTicket.Said(view.Book, truck, $"decided {Key}", HappeningKind.Decided, Happening.TextOf(Words(said), said.ToJson()), At, now)];
            },
            by, OnTicket.Source, provided: view =>
            {
                SeenTicket.Unchanged(Ticket, Seen)(view);
                Demand(view.Book, OnTicket.Truck(view.Book, Ticket), At ?? now);
            });
    }

    private string Words(LoadDecision said)
    {
        var words = LoadDecision.WordsOf(said.Kind) + (said.Bin.Length > 0 ? $", to {said.Bin}" : "") + (IsOverride ? $", against the advice to {Advice!.Words}" : "");
        return Why.Trim().Length > 0 ? $"{words}: {Why.Trim()}" : words;
    }

    private bool IsOverride => Advice?.IsOverriddenBy(Decision.Kind) == true;

    private void Demand(Book book, Place truck, Instant at)
    {
        if (OnTicket.Read(book, truck, Property.TareWeight) is not null)
        {
            throw OnTicket.Refusal(truck, "is weighed empty already: its load lies in a bin. Put the bin right instead.");
        }

        if (IsOverride && Why.Trim().Length == 0)
        {
            throw OnTicket.Refusal(truck, $"cannot be decided on ({LoadDecision.WordsOf(Decision.Kind)}) against the advice to {Advice!.Words} without a reason. Say why.");
        }

        if (Decision.Kind != LoadDecisionKind.Accept && Why.Trim().Length == 0)
        {
            throw OnTicket.Refusal(truck, $"cannot be decided on ({LoadDecision.WordsOf(Decision.Kind)}) without a reason. Say why.");
        }

        if (Decision.Stage != TruckStage.SentTo)
        {
            return;
        }

        if (book.Find(Decision.Bin) is not { Kind: PlaceKind.Bin } bin)
        {
            throw OnTicket.Refusal(truck, Decision.Bin.Length == 0 ? "is sent to no bin: choose one." : $"cannot go to {Decision.Bin}: that is no wheat bin. Choose one from the list.");
        }

        var from = truck;
        foreach (var to in Decision.Stops.Select(book.Named))
        {
            from = book.CanFlow(from, to) ? to : throw new LedgerRefusal(LedgerRule.NotConnected, $"Nothing can go from {from.Code} to {to.Code}: choose another way, or another bin than {bin.Code}.") { Place = truck.Code };
        }

        if (book.BarsOn(bin.Id, at).AgainstIn(PlaceKind.Bin) is { } bar)
        {
            throw new LedgerRefusal(Rule(bar), $"Nothing may go into {bin.Code} since {bar.At} ({bar.Words}). Send the load to another bin, or have the named person clear it first.") { Place = bin.Code };
        }
    }

    private static LedgerRule Rule(Happening bar) => bar.Kind switch
    {
        HappeningKind.PersonInside => LedgerRule.PersonInside,
        HappeningKind.UnderGas => LedgerRule.UnderGas,
        HappeningKind.Shut => LedgerRule.Shut,
        _ => LedgerRule.OnHold,
    };
}
