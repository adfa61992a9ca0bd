using Evengrist.Intake.Deciding;
using Evengrist.Records.Intake;
using Evengrist.Records.Mix;
using Evengrist.Records.Season;
using Evengrist.Season;
using Evengrist.Season.Terms;
using Evengrist.Web.Sights.Bins;
using Evengrist.Web.Sights.Season;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Mix;

/// <summary>The mix of a flour at the moment looked at: what every page about a mix starts from.</summary>
/// <param name="Terms">The terms of the crop year.</param>
/// <param name="Version">Their version.</param>
/// <param name="Bins">Bins that the flour may take.</param>
/// <param name="Sight">The mix.</param>
/// <param name="UnknownFlour">A flour that was asked for and is not in the terms; null where none was.</param>
public sealed record MixOfDay(SeasonTerms Terms, int Version, IReadOnlyList<string> Bins, MixSight Sight, string? UnknownFlour)
{
    /// <summary>Finds it; null where no terms are kept.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="desk">Plans of the year.</param>
    /// <param name="flourCode">The flour asked for; the first of the terms where none is or it is not known.</param>
    /// <param name="typed">What was typed, by field.</param>
    public static MixOfDay? Of(Visit visit, YearDesk desk, string? flourCode, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(desk);
        if (SeasonShelf.TermsOf(visit.Mill) is not { } kept)
        {
            return null;
        }

        var (terms, version) = kept;
        var known = terms.Flours.FirstOrDefault(f => f.Code.Equals(flourCode?.Trim(), StringComparison.OrdinalIgnoreCase));
        var flour = known ?? terms.Flours[0];
        var (wheats, worth, remarks) = Wheats(visit, desk, terms);
        string[] bins = [.. wheats.Where(w => flour.Classes.Count == 0 || flour.Classes.Contains(w.WheatClass)).Select(w => w.Code)];
        var habit = MixHabit.Of(visit, flour.Code);
        MarketLimit[] market = [.. MarketShelf.Of(visit.Mill, HouseRulesShelf.Of(visit.Mill)).SelectMany(m => m.Limits).Where(l => l.Stage == LimitStage.AsReceived)];
        var sight = MixSight.Of(MixAsk.Of(terms, flour, bins, MillRelations.Of(visit.Mill, flour.Code), typed), wheats, BinShelf.Of(visit.Mill).Values, worth, terms.Currency, habit, market,
            visit.Mill.Ask(view => NextSolids.Of(view, visit.AsOf)));
        return new MixOfDay(terms, version, bins, sight with { Remarks = [.. sight.Remarks, .. remarks.Select(visit.InMillTime)] }, known is null && !string.IsNullOrWhiteSpace(flourCode) ? flourCode.Trim() : null);
    }

    // After the end of the crop year there is no plan, but what was left out of the stocks still has to be said.
    private static (SeasonWheat[] Wheats, SeasonWorth? Worth, IReadOnlyList<string> Remarks) Wheats(Visit visit, YearDesk desk, SeasonTerms terms)
    {
        if (visit.AsOf.InZone(visit.Zone).Date > terms.End)
        {
            var stocks = visit.Mill.Ask(view => SeasonStocks.Of(view, visit.AsOf));
            return ([.. stocks.Wheats.Select(terms.Seen)], null, ["The crop year of the terms is over at this moment, so there is no plan of it.", .. stocks.Remarks, .. SeasonShelf.Supposed(stocks.Wheats, terms)]);
        }

        var year = desk.PlanOf(visit.Mill, terms, visit.AsOf);
        return ([.. year.Spec.Wheats.Where(w => w.OpeningTonnes > 0)], year.Linear is SeasonPlanned linear ? new SeasonWorth(linear.Plan) : null, year.Remarks);
    }
}
