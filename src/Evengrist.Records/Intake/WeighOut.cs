using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A truck is weighed empty: what was on it is booked from its field, through pit and leg, into the bin it was sent to.</summary>
/// <param name="Ticket">The ticket.</param>
/// <param name="Tare">Weight empty; below the gross.</param>
public sealed record WeighOut(string Ticket, Mass Tare)
{
    /// <summary>Which scale, by the name its certificate is kept under; empty where it is not said.</summary>
    public string Scale { get; init; } = "";

    /// <summary>When; null for now.</summary>
    public Instant? At { get; init; }

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records the weight and the way of the load. The same weight sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">The weight cannot be, the truck was sent nowhere, the bin cannot take the load, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(view => [.. Drafts(view.Book, OnTicket.Truck(view.Book, Ticket), now)], by, OnTicket.Source, provided: SeenTicket.Unchanged(Ticket, Seen));
    }

    private IEnumerable<Draft> Drafts(Book book, Place truck, Instant now)
    {
        var gross = OnTicket.Read(book, truck, Property.GrossWeight) ?? throw OnTicket.Refusal(truck, "was not weighed full yet. Weigh it in first.");
        var full = Mass.FromKilograms(gross.Value);
        if (Weighing.Fault(full, Tare) is { } fault)
        {
            throw OnTicket.Refusal(truck, $"cannot be weighed out so. {fault}");
        }

        if (Tare == full)
        {
            throw OnTicket.Refusal(truck, $"weighs {Tare} full and empty: then nothing was delivered. Weigh the empty truck again.");
        }

        var there = OnTicket.Read(book, truck, Property.TareWeight);
        if (there is not null && there.Value != Tare.Kilograms)
        {
            throw OnTicket.Refusal(truck, $"was weighed empty at {there.Value} kg already. If that is wrong, put it right instead.");
        }

        var at = OnTicket.When(there, Tare.Kilograms, At, now);
        if (at < gross.At)
        {
            throw OnTicket.Refusal(truck, $"was weighed full at {gross.At}: it cannot be weighed empty before, at {at}. Look at the time of each.");
        }

        yield return OnTicket.Weight(truck.Code, "tare", Property.TareWeight, Tare, at, there?.Instrument ?? Scale);
        yield return new Move($"{truck.Code}/net", From(book, truck), truck.Code, full - Tare, gross.At);
        var from = truck.Code;
        foreach (var (n, to) in Decided(book, truck).Stops.Index())
        {
            yield return new Move($"{truck.Code}/way {n + 1}", from, to, full - Tare, at);
            from = to;
        }
    }

    private static LoadDecision Decided(Book book, Place truck) =>
        book.HappeningsOn(truck.Id).LastOrDefault(h => h.Kind == HappeningKind.Decided) is { } last && LoadDecision.Read(last) is { Stage: TruckStage.SentTo } decision
            ? decision
            : throw OnTicket.Refusal(truck, "was sent to no bin. Decide first where its load goes.");

    private static string From(Book book, Place truck) => Arrival.Of(book, truck)?.From is { Length: > 0 } from
        ? from
        : throw OnTicket.Refusal(truck, "does not say where its load comes from, for it was not opened at the gate. Record it whole instead.");
}
