using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Records.Season;

/// <summary>The terms of the crop year as kept, and what a plan of a day is made from.</summary>
public static class SeasonShelf
{
    /// <summary>The newest terms with their version; null where none are kept or they cannot be read.</summary>
    public static (SeasonTerms Terms, int Version)? TermsOf(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(SeasonTerms.Kind).Newest(SeasonTerms.Code) is { } paper && SeasonTerms.TryRead(paper.Json, out var terms, out _) ? (terms, paper.Version) : null;
    }

    /// <summary>Keeps terms as the next version; every fault where they cannot be, and then nothing is kept.</summary>
    public static IReadOnlyList<string> KeepTerms(Mill mill, SeasonTerms terms, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        if (terms.Faults() is { Count: > 0 } faults)
        {
            return faults;
        }

        if (string.IsNullOrWhiteSpace(by))
        {
            return ["Say who you are first: every record carries a name."];
        }

        mill.Papers(SeasonTerms.Kind).KeepNext(SeasonTerms.Code, terms.ToJson(), by);
        return [];
    }

    /// <summary>What a plan from the milling day of a moment on is made from, and what was left out.</summary>
    public static (SeasonSpec Spec, IReadOnlyList<string> Remarks) SpecOf(Mill mill, SeasonTerms terms, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        var stocks = mill.Ask(view => SeasonStocks.Of(view, at));
        return (SpecFromTerms.Of(terms, at.InZone(mill.Settings.Zone).Date, stocks.Wheats, stocks.Homes, stocks.Flours), [.. stocks.Remarks, .. Supposed(stocks.Wheats, terms)]);
    }

    /// <summary>What is supposed of wheats because it was not read, each a sentence.</summary>
    public static IEnumerable<string> Supposed(IEnumerable<SeasonWheat> wheats, SeasonTerms terms) => wheats.SelectMany(w => Supposed(w, terms));

    private static IEnumerable<string> Supposed(SeasonWheat wheat, SeasonTerms terms) => UsualTerms.Missing(wheat, terms.Usual)
        .Select(q => FormattableString.Invariant($"{wheat.Code}: its {q.What.Words()} was not read; {q.Value:0.##} {Readings.UnitsOf(q.What)[0]} is supposed, the usual of {wheat.WheatClass}."));
}
