using Evengrist.Plant.Epcis.Writing;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>What the ledger says now in the place of events that it does not say any more.</summary>
internal sealed class Correctives
{
    private readonly Dictionary<string, string?> byFact = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> holds = new(StringComparer.Ordinal);
    private readonly List<New> news = [];
    private readonly ILookup<(string Sort, string Subject), New> bySubject;
    private readonly ILookup<(string Sort, string Where, long Moment), New> byMoment;

    /// <param name="near">What is told at the moments of those events, of their lots, and of facts that put others right.</param>
    /// <param name="before">What was told before.</param>
    public Correctives(IEnumerable<WrittenEvent> near, SentBefore before)
    {
        foreach (var told in near)
        {
            var text = told.Text();
            if (told.IsWrong)
            {
                byFact[text.Id] = told.Corrective?.Text().Id;
                continue;
            }

            var key = text.Key;
            var sent = before.AsSent(text, key);
            var id = sent.Id;
            holds[text.Id] = id;
            if (!before.InForce.ContainsKey(key))
            {
                var (sort, subject, where) = text.Likeness();
                news.Add(new(key, id, sort, subject, where, text.Moment));
            }
        }

        bySubject = news.ToLookup(n => (n.Sort, n.Subject));
        byMoment = news.ToLookup(n => (n.Sort, n.Where, n.Moment));
    }

    /// <summary>Whether an event that was told holds all the same, written in other words.</summary>
    public bool Holds(EventText text) => holds.TryGetValue(text.Said.Id, out var id) && id == text.Id;

    /// <summary>Identifiers of what stands in for an event; empty where nothing does.</summary>
    /// <param name="text">The event as it was told.</param>
    /// <param name="alone">Whether no other event of its sort, place and moment is gone as well.</param>
    public IReadOnlyList<string> Of(EventText text, bool alone)
    {
        if (byFact.TryGetValue(text.Said.Id, out var id))
        {
            // What puts it right may have been put right itself, at last even back to what was said at first.
            var seen = new HashSet<string>(StringComparer.Ordinal);
            while (id is not null && !holds.ContainsKey(id) && seen.Add(id))
            {
                id = byFact.GetValueOrDefault(id);
            }

            return id is not null && holds.TryGetValue(id, out var sent) ? [sent] : [];
        }

        var ((sort, subject, where), moment) = (text.Likeness(), text.Moment);
        var (same, then) = (bySubject[(sort, subject)].ToList(), byMoment[(sort, where, moment)].ToList());
        return [.. (IsOfAPlace(sort) || (same.Count == 0 && alone && then.Count == 1) ? same.Union(then) : same).Select(n => n.Id).Distinct()];
    }

    /// <summary>Keys of those with the identifiers.</summary>
    public IEnumerable<UInt128> Keys(IReadOnlySet<string> ids) => news.Where(n => ids.Contains(n.Id)).Select(n => n.Key);

    // A mixture that was cut in two is told by two; which ends where the first did is known by its place alone.
    private static bool IsOfAPlace(string sort) => sort is "TransformationEvent  commissioning" or "ObjectEvent DELETE destroying";

    private sealed record New(UInt128 Key, string Id, string Sort, string Subject, string Where, long Moment);
}
