using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Quantities.Lists;
using Evengrist.Records;
using Evengrist.Records.Tracing;
using Evengrist.Web.Sights.Lists;
using NodaTime;

namespace Evengrist.Web.Sights.Events;

/// <summary>Documents of events that were sent to others, as their page shows them and as a list.</summary>
public static class SentLists
{
    /// <summary>The list.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer("/ledger/events", "events-sent", "Documents of events (EPCIS) that were sent to others", new ListOf<(SentDocument Head, int Number, string By, Instant At)>()
                .Moment("sent", s => s.At).Text("to", s => s.Head.To).Whole("no.", s => s.Number).Text("the way of lot", s => s.Head.Code).Moment("what happened from", s => s.Head.From).Moment("what happened before", s => s.Head.Until).Text("bins taken to empty", s => s.Head.Outflow.Words())
                .Whole("events", s => s.Head.Events, null, ListOrigin.Seen).Whole("of them new", s => s.Head.Told, null, ListOrigin.Seen).Whole("declared wrong", s => s.Head.Declared, null, ListOrigin.Seen).Text("by", s => s.By),
            (visit, _) => (Sent(visit.Mill), "")),
    ];

    /// <summary>Each of them, the newest first.</summary>
    /// <exception cref="InvalidOperationException">What is kept cannot be read.</exception>
    public static IReadOnlyList<(SentDocument Head, int Number, string By, Instant At)> Sent(Mill mill) =>
        [.. Sendings.All(mill).OrderByDescending(p => p.Recorded).Select(p => SentDocument.TryRead(p.Json, out var head, out var faults) ? (head, p.Version, p.By, p.Recorded) : throw new InvalidOperationException(string.Join(" ", faults)))];
}
