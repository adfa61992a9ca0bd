using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>What every entry into the ledger needs beside its own figures, on a page and over HTTP alike.</summary>
internal static class EntryFaults
{
    /// <summary>What is missing, each a sentence; empty where nothing is.</summary>
    /// <param name="key">The entry's own key, so that the same entry sent twice is one.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    public static IReadOnlyList<string> Of(string? key, Instant? at, string? by, string nameless) =>
    [
        .. at is null ? ["When: give date and time, such as 2026-01-14T08:00."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(key) ? ["The entry has no key of its own: open the page again, or send one."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(by) ? [nameless] : Array.Empty<string>(),
    ];
}
