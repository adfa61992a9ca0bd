using System.Text.Json;

namespace Evengrist.Records.Tracing;

/// <summary>Events that customers and suppliers sent: each kept once by its event hash, whichever documents it stood in; the documents as they came beside them. They are no facts of the ledger.</summary>
public static class OthersEvents
{
    /// <summary>Kind of the paper that keeps an event; its code is the event hash.</summary>
    public const string EventKind = "epcis-event";

    /// <summary>Kind of the paper that keeps a document; its code is the hash of its bytes.</summary>
    public const string DocumentKind = "epcis-document";

    private const string Declaration = "errorDeclaration";

    /// <summary>Takes a document in, all of its events or none. The same document twice, or two that overlap, give each event once.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="code">Hash of the document.</param>
    /// <param name="document">The document as it came.</param>
    /// <param name="events">Its events by hash, each as JSON by itself.</param>
    /// <param name="by">Who takes it in.</param>
    public static EventsTaken Take(Mill mill, string code, string document, IReadOnlyList<(string Hash, string Json)> events, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(events);

        var shelf = mill.Papers(EventKind);
        var fresh = events.Select(e => e.Hash).Where(h => shelf.Newest(h) is null).ToHashSet(StringComparer.Ordinal);

        // The document last: if the events were kept and it was not, taking it in again keeps it.
        var (added, further, known) = shelf.KeepEach(events, (kept, news) => Declares(news) && !Declares(kept.Json), by);
        mill.Papers(DocumentKind).Keep(code, 1, document, by);
        fresh.ExceptWith(events.Where(e => !Declares(e.Json)).Select(e => e.Hash));
        return new EventsTaken(added, further, known, fresh.Count);
    }

    /// <summary>All of them by hash, as they were said last; the first version is the event, a second one that it is in error.</summary>
    public static IReadOnlyList<Paper> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(EventKind).NewestOfEach();
    }

    private static bool Declares(string json)
    {
        using var read = JsonDocument.Parse(json);
        return read.RootElement.TryGetProperty(Declaration, out _);
    }
}
