using Evengrist.Ledger;

namespace Evengrist.Records.Tracing;

/// <summary>
/// What documents of events were sent to whom, by whom and when: a paper for each under the name of whom it went to, its version the number of the sending; what it told beside it, so that a list of them is read without it.
/// </summary>
public static class Sendings
{
    /// <summary>Kind of the paper that says of a sending what it was; its code is whom it went to.</summary>
    public const string Kind = "epcis-sent";

    /// <summary>Kind of the paper that keeps what it told.</summary>
    public const string EventsKind = "epcis-sent-events";

    /// <summary>All of them, by whom they went to and by number.</summary>
    public static IReadOnlyList<Paper> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(Kind).All();
    }

    /// <summary>The name as it is kept, where something went to it before in other capitals; otherwise as it is given.</summary>
    public static string NameOf(Mill mill, string to)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentException.ThrowIfNullOrWhiteSpace(to);
        return mill.Papers(Kind).NewestOfEach().FirstOrDefault(p => p.Code.Equals(to.Trim(), StringComparison.OrdinalIgnoreCase))?.Code ?? to.Trim();
    }

    /// <summary>What went to somebody, in its order.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="to">Whom it went to, as it is kept.</param>
    public static IReadOnlyList<Paper> To(Mill mill, string to) => [.. All(mill).Where(p => p.Code == to).OrderBy(p => p.Version)];

    /// <summary>What a sending told.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="to">Whom it went to, as it is kept.</param>
    /// <param name="version">The version its head names.</param>
    /// <exception cref="InvalidOperationException">It is not kept.</exception>
    public static string EventsOf(Mill mill, string to, int version)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(EventsKind).Find(to, version)?.Json ?? throw new InvalidOperationException($"What a sending to {to} told is not kept, as version {version}.");
    }

    /// <summary>Keeps that a document was sent. What it told goes first: without its head it does not count.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="to">Whom it went to.</param>
    /// <param name="number">Number of the sending: one more than went before.</param>
    /// <param name="head">What it was, made with the version that its events are kept as.</param>
    /// <param name="events">What it told.</param>
    /// <param name="by">Who sends it.</param>
    /// <exception cref="LedgerRefusal">Another sending of the number was kept meanwhile.</exception>
    public static void Keep(Mill mill, string to, int number, Func<int, string> head, string events, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(head);
        var kept = mill.Papers(EventsKind).KeepNext(to, events, by);
        try
        {
            mill.Papers(Kind).Keep(to, number, head(kept), by);
        }
        catch (LedgerRefusal refusal) when (refusal.Rule == LedgerRule.KeyTaken)
        {
            throw new LedgerRefusal(LedgerRule.KeyTaken, $"Something else was sent to {to} meanwhile, so this document is not kept as sent and may declare too little. Do not send it: write it again.");
        }
    }
}
