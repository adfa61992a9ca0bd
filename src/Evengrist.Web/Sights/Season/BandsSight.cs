using Evengrist.Planning.Season.Bands;
using Evengrist.Records;
using Evengrist.Season.Bands;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>Bands of the next harvest, as a page and its print show them.</summary>
/// <param name="Year">The year into which it comes.</param>
/// <param name="Classes">Classes that are expected, most tonnes first.</param>
/// <param name="WheatClass">The class looked at.</param>
/// <param name="Ask">What is asked.</param>
/// <param name="Work">The work on it; null where it was not asked or cannot be.</param>
public sealed record BandsSight(HarvestYear Year, IReadOnlyList<string> Classes, string WheatClass, BandsAsk Ask, LongWork<BandsOutcome>? Work)
{
    /// <summary>What came of it; null while it is being reckoned, or where there is none.</summary>
    public BandsPlanned? Planned => Work?.Outcome as BandsPlanned;

    /// <summary>Looks; begins the work where the form was sent and nothing is wrong with it.</summary>
    /// <param name="desk">Where plans and work are kept.</param>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment looked at.</param>
    /// <param name="query">What was typed.</param>
    /// <param name="again">Whether stopped work is begun anew.</param>
    /// <returns>Null where there is no plan to start from, or nothing is expected.</returns>
    public static BandsSight? Of(YearDesk desk, Mill mill, Instant at, IQueryCollection query, bool again)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(query);
        if (Records.Season.SeasonShelf.TermsOf(mill) is not { } kept || HarvestYear.Of(desk, mill, kept.Terms, at) is not { } year)
        {
            return null;
        }

        string[] classes = [.. year.Arrivals.GroupBy(a => a.WheatClass).OrderByDescending(g => g.Sum(a => a.Tonnes)).Select(g => g.Key)];
        if (classes.Length == 0)
        {
            return null;
        }

        var wheatClass = query["class"].ToString() is { Length: > 0 } asked ? asked : classes[0];
        var sent = query.ContainsKey("most");
        var ask = BandsAsk.Of(year, wheatClass, query.Typed, sent ? [.. query["bin"].OfType<string>()] : null);
        var work = sent && ask.Spec is { } spec
            ? desk.WorkOn(year.Question, query.Without("show"), () => YearWork.Plan<BandsOutcome>((progress, stop) => BandRun.Reckon(spec, ask.Season, ask.EndValue, progress, stop), failed => new BandsNotPlanned(failed)), again)
            : null;
        return new BandsSight(year, classes, wheatClass, ask, work);
    }

    /// <summary>Number of the row that is shown: the one asked for, else the one that is advised.</summary>
    public int Shown(string? bands) =>
        Planned is { } planned ? int.TryParse(bands, out var count) && planned.Rows.Index().FirstOrDefault(r => r.Item.Design.Bands.Count == count) is { Item: not null } row ? row.Index : BandWords.Advised(planned.Rows, Ask.Trouble) : 0;

    /// <summary>The query with another number of bands to show.</summary>
    public static string Query(IQueryCollection query, int bands) => query.Without("show") + $"&show={bands}";
}
