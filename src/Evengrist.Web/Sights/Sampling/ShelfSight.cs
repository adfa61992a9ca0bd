using Evengrist.Ledger;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>Retained samples as they stand at a moment.</summary>
/// <param name="Samples">Those that are shown, the one due first foremost.</param>
/// <param name="Standing">How many stand on a shelf.</param>
/// <param name="Due">How many of them may be thrown away.</param>
/// <param name="Gone">How many were thrown away.</param>
/// <param name="Today">The day looked at.</param>
public sealed record ShelfSight(IReadOnlyList<RetainedSample> Samples, int Standing, int Due, int Gone, LocalDate Today)
{
    /// <summary>Looks at the shelves.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="at">The moment.</param>
    /// <param name="today">Its day on the mill's clock.</param>
    /// <param name="words">A number, ticket or shelf to look for; empty for all.</param>
    /// <param name="which"><c>due</c>, <c>gone</c>, or all that stand.</param>
    public static ShelfSight Of(Book book, Instant at, LocalDate today, string words, string which)
    {
        var all = RetainedSample.All(book, at);
        var standing = all.Where(s => s.Discarded is null).ToArray();
        var due = standing.Where(s => s.IsDue(today)).ToArray();
        var gone = all.Where(s => s.Discarded is not null).ToArray();
        IEnumerable<RetainedSample> chosen = which switch { "due" => due, "gone" => gone, _ => standing };
        bool Has(string text) => text.Contains(words.Trim(), StringComparison.OrdinalIgnoreCase);
        return new ShelfSight(
            [.. chosen.Where(s => words.Trim().Length == 0 || Has(s.Taken.RetainedId) || Has(s.Load.Code) || Has(s.Taken.Shelf)).OrderBy(s => s.Taken.LastDay).ThenBy(s => s.Taken.RetainedId, StringComparer.Ordinal)],
            standing.Length, due.Length, gone.Length, today);
    }
}
