using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>What of a list is wanted; what is left out does not narrow.</summary>
/// <param name="AsOf">The moment looked at: what has happened by then counts.</param>
/// <param name="Zone">The mill's time zone.</param>
public sealed record ListAsk(Instant AsOf, DateTimeZone Zone)
{
    private static readonly Dictionary<string, string> None = [];

    /// <summary>Happened at or after.</summary>
    public Instant? From { get; init; }

    /// <summary>Happened before.</summary>
    public Instant? Until { get; init; }

    /// <summary>Code of the one thing it is about: a place, a mill unit, a grower.</summary>
    public string Of { get; init; } = "";

    /// <summary>What a list asks for beyond that, by name.</summary>
    public IReadOnlyDictionary<string, string> More { get; init; } = None;

    /// <summary>Something more by its name; empty where it was not said.</summary>
    public string this[string name] => More.TryGetValue(name, out var said) ? said.Trim() : "";

    /// <summary>Where the span asked for ends at the latest: nothing counts that has not happened by the moment looked at.</summary>
    public Instant End => Until is { } until && until < AsOf ? until : AsOf;

    /// <summary>What is wrong with it and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => From >= Until ? "The span ends before it begins: say the earlier as from and the later as until." : null;

    /// <summary>Whether a moment lies in the span asked for, come or not.</summary>
    public bool Spans(Instant at) => (From is not { } from || at >= from) && (Until is not { } until || at < until);

    /// <summary>Whether a moment lies in the span asked for and has come by the moment looked at.</summary>
    public bool Holds(Instant at) => at <= AsOf && Spans(at);

    /// <summary>Whether a code is the one asked for, or none is.</summary>
    public bool Names(string code) => Of.Length == 0 || code.Equals(Of, StringComparison.OrdinalIgnoreCase);
}
