using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Writing;
using NodaTime;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>
/// A document of events for somebody who was told of the ledger before: what he was told and the ledger does not say any more is declared wrong to him, once, with what stands in for it. Page: docs/model/epcis-export.md.
/// </summary>
public sealed class DocumentTo
{
    private readonly MillDocument document;
    private readonly string to;
    private readonly Instant now;
    private readonly MillNames names;
    private readonly ToldEvents told;
    private readonly SentBefore before;
    private readonly List<string> news = [];
    private (IReadOnlyList<(WrongEvent Wrong, EventText Text)> Wrong, Scope Near, HashSet<UInt128> News)? looked;

    /// <param name="document">What the ledger says now, under the outflow by which he was told before.</param>
    /// <param name="to">Whom it is for.</param>
    /// <param name="earlier">All that went to him, in its order.</param>
    /// <param name="now">The present moment: errors are declared then.</param>
    public DocumentTo(MillDocument document, string to, IReadOnlyList<SentEvents> earlier, Instant now)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        ArgumentNullException.ThrowIfNull(earlier);
        (this.document, this.to, this.now) = (document, to, Instant.Max(now, document.Dated()));
        names = new MillNames(document.Keys, document.Mill);
        told = new ToldEvents(document, names);
        before = new SentBefore(earlier);
    }

    /// <summary>What he was told that would be declared wrong to him now, in the order he was told it.</summary>
    public IReadOnlyList<WrongEvent> Wrong() => [.. Look().Wrong.Select(w => w.Wrong)];

    /// <summary>How many events he was told that are not declared wrong.</summary>
    public int InForce => before.InForce.Count;

    /// <summary>Writes what happened in a span of time, its end left out.</summary>
    /// <returns>The head of it, and what is to be kept when it is sent.</returns>
    public (SentDocument Head, SentEvents Events) Write(Stream stream, Instant from, Instant until) => Write(stream, Scope.Between(document.Book, document.Reckoning.Parcels, from, until), null, from, until);

    /// <summary>Writes the way of what was in a place.</summary>
    /// <returns>The head of it, and what is to be kept when it is sent; null with nothing written where the place is neither a unit nor a source.</returns>
    public (SentDocument Head, SentEvents Events)? Write(Stream stream, Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return MillDocument.CanFollow(place) ? Write(stream, Scope.Of(document.Book, document.Reckoning.Parcels, place), place.Code, null, null) : null;
    }

    private (SentDocument Head, SentEvents Events) Write(Stream stream, Scope scope, string? code, Instant? from, Instant? until)
    {
        var (wrong, near, further) = Look();
        var written = new HashSet<UInt128>();
        var count = 0;
        news.Clear();
        using var writer = MillDocument.Begin(stream, names, now, to);
        foreach (var (each, text) in wrong)
        {
            Put(writer, text.Wrong(now, each.CorrectedBy));
            count++;
        }

        foreach (var (text, key) in Held(scope).Concat(Held(near).Where(e => further.Contains(e.Key))))
        {
            if (written.Add(key))
            {
                var sent = before.AsSent(text, key);
                Put(writer, sent.Named());
                count++;
                if (!before.InForce.ContainsKey(key))
                {
                    news.Add(sent.Json);
                }
            }
        }

        MillDocument.End(writer);
        return (new(to, document.Reckoning.Outflow, count, news.Count, wrong.Count, 0, code, from, until), SentEvents.Of(news, wrong.Select(w => w.Wrong)));
    }

    private (IReadOnlyList<(WrongEvent Wrong, EventText Text)> Wrong, Scope Near, HashSet<UInt128> News) Look()
    {
        if (looked is { } known)
        {
            return known;
        }

        var holds = Held(told.At(before.InForce.Values.Select(s => s.Moment), [], false)).Select(e => e.Key).ToHashSet();
        var gone = before.InForce.Keys.Where(k => !holds.Contains(k)).ToHashSet();
        var texts = before.Told(gone).ToList();
        var near = told.At(texts.Select(t => t.Standing.Moment), texts.Select(t => t.Text.Likeness().Subject), texts.Count > 0);
        var correctives = new Correctives(told.In(near), before);
        var crowd = texts.CountBy(t => Spot(t.Text)).ToDictionary();
        var wrong = texts.Where(t => !correctives.Holds(t.Text))
            .Select(t => (new WrongEvent(t.Standing.Sending, t.Standing.Line, EpcisEvent.Of(t.Text), correctives.Of(t.Text, crowd[Spot(t.Text)] == 1)), t.Text)).ToList();
        return (looked = (wrong, near, [.. correctives.Keys(wrong.SelectMany(w => w.Item1.CorrectedBy).ToHashSet(StringComparer.Ordinal))])).Value;
    }

    private static (string Sort, string Where, long Moment) Spot(EventText text) => (text.Likeness().Sort, text.Likeness().Where, text.Moment);

    private IEnumerable<(EventText Text, UInt128 Key)> Held(Scope scope) => told.In(scope).Where(e => !e.IsWrong).Select(e => e.Text()).Select(t => (t, t.Key));

    private static void Put(Utf8JsonWriter writer, string json)
    {
        writer.WriteRawValue(json, skipInputValidation: true);
        if (writer.BytesPending > MillDocument.Flush)
        {
            writer.Flush();
        }
    }
}
