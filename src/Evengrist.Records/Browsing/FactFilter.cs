using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Browsing;

/// <summary>Which facts are wanted; what is left out does not narrow.</summary>
public sealed record FactFilter
{
    /// <summary>Code of a place the fact is about, at either end.</summary>
    public string? Place { get; init; }

    /// <summary>One sort only.</summary>
    public FactSort? Sort { get; init; }

    /// <summary>Recorded by this person; case does not matter.</summary>
    public string? By { get; init; }

    /// <summary>From this source; case does not matter.</summary>
    public string? Source { get; init; }

    /// <summary>Words that stand in the key, the note, the code, a name, a method or a text; case does not matter.</summary>
    public string? Text { get; init; }

    /// <summary>Happened at or after; places and connections go by when they were recorded.</summary>
    public Instant? From { get; init; }

    /// <summary>Happened before.</summary>
    public Instant? Until { get; init; }

    /// <summary>Only facts that put earlier ones right.</summary>
    public bool Correcting { get; init; }

    /// <summary>Recorded before this one: the <see cref="FactPage.Next"/> of the page before.</summary>
    public FactId? Before { get; init; }

    /// <summary>How many on a page, 1 to 1000.</summary>
    public int Size { get; init; } = 50;
}
