using Evengrist.Ledger;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>All that went to somebody before, in its order.</summary>
/// <param name="To">Whom it went to.</param>
/// <param name="Heads">What each sending was.</param>
/// <param name="Events">What each told.</param>
public sealed record Earlier(string To, IReadOnlyList<SentDocument> Heads, IReadOnlyList<SentEvents> Events)
{
    /// <summary>Number of the next sending.</summary>
    public int Next => Heads.Count + 1;

    /// <summary>How bins were taken to empty in what he was told; null where he was told nothing.</summary>
    public Outflow? Outflow => Heads.Count > 0 ? Heads[^1].Outflow : null;

    /// <summary>Reads what was kept.</summary>
    /// <param name="to">Whom it went to.</param>
    /// <param name="heads">The heads as they are kept, in their order.</param>
    /// <param name="events">What was told, by the version that a head names.</param>
    /// <exception cref="InvalidOperationException">What is kept cannot be read.</exception>
    public static Earlier Read(string to, IEnumerable<string> heads, Func<int, string> events)
    {
        ArgumentNullException.ThrowIfNull(heads);
        ArgumentNullException.ThrowIfNull(events);
        IReadOnlyList<SentDocument> read = [.. heads.Select(h => SentDocument.TryRead(h, out var head, out var faults) ? head : throw new InvalidOperationException(string.Join(" ", faults)))];
        return new(to, read, [.. read.Select(h => SentEvents.TryRead(events(h.Kept), out var told, out var faults) ? told : throw new InvalidOperationException(string.Join(" ", faults)))]);
    }

    /// <summary>Why a document under another outflow cannot go to him; null where it can.</summary>
    /// <param name="outflow">How bins are to be taken to empty.</param>
    public string? Against(Outflow outflow) => Outflow is { } known && known != outflow
        ? $"{To} was told so far that bins empty {known.Words()}. The same lots told another way would contradict that: write it by {known.Words()}." : null;

    /// <summary>What was declared wrong so far, the latest first.</summary>
    /// <param name="most">Events at most.</param>
    /// <returns>Number of the sending that declared it, and the event as it was told.</returns>
    public IReadOnlyList<(int Sending, WrongEvent Wrong)> Declared(int most)
    {
        var declared = Events.Index().Reverse().SelectMany(e => e.Item.DeclaredLines().Select(d => (Number: e.Index + 1, d.Sending, d.Line, d.CorrectedBy))).Take(most).ToList();
        var texts = declared.GroupBy(d => d.Sending).ToDictionary(g => g.Key, g => Texts(g.Key, [.. g.Select(d => d.Line)]));
        return [.. declared.Select(d => (d.Number, new WrongEvent(d.Sending, d.Line, EpcisEvent.Of(texts[d.Sending][d.Line]), d.CorrectedBy)))];
    }

    /// <summary>What is wrong with a name of somebody to send to; null where nothing is.</summary>
    public static string? Fault(string? to) => string.IsNullOrWhiteSpace(to) ? "Say to whom it goes: a customer's code, or the name of an authority."
        : to.Trim().Length > SentDocument.LongestName || to.Any(char.IsControl) ? $"Whom it goes to is a name of at most {SentDocument.LongestName} letters on one line." : null;

    private Dictionary<int, EventText> Texts(int sending, HashSet<int> lines) => Events[sending - 1].Lines().Index().Where(l => lines.Contains(l.Index)).ToDictionary(l => l.Index, l => l.Item);
}
