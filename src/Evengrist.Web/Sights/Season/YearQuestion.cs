using Evengrist.Ledger;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>What makes one plan another than the next: the moment, the facts known, and the terms.</summary>
/// <param name="At">The moment.</param>
/// <param name="Last">The newest fact the ledger held.</param>
/// <param name="Terms">The terms as text.</param>
public sealed record YearQuestion(Instant At, FactId Last, string Terms)
{
    /// <summary>The question of a mill's terms at a moment.</summary>
    public static YearQuestion Of(Records.Mill mill, SeasonTerms terms, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        return new YearQuestion(at, mill.Ask(view => view.Book.Last), terms.ToJson());
    }
}
