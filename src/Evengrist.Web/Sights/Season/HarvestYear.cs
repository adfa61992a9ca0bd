using Evengrist.Records;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>The crop year into which the next harvest comes: this one where it is still to come by the terms, else the one after it.</summary>
/// <param name="Terms">Its terms.</param>
/// <param name="Spec">What it is planned from.</param>
/// <param name="Question">What makes it another than the next.</param>
/// <param name="IsNext">Whether it is the year after that of the terms: their dates a year later, begun with what the plan leaves.</param>
/// <param name="Before">The plan of the year that ends with this harvest: of the terms' own year.</param>
/// <param name="Lies">What lies in each bin when it begins, t with its class; bins that are empty are missing.</param>
public sealed record HarvestYear(SeasonTerms Terms, SeasonSpec Spec, YearQuestion Question, bool IsNext, SeasonPlan Before, IReadOnlyDictionary<string, (double Tonnes, string WheatClass)> Lies)
{
    /// <summary>What is expected of it.</summary>
    public IReadOnlyList<ArrivalTerms> Arrivals => [.. Terms.Arrivals.Where(a => a.Last >= Spec.Start)];

    /// <summary>The year that a mill's terms lead to; null where there is no plan to start from.</summary>
    public static HarvestYear? Of(YearDesk desk, Mill mill, SeasonTerms terms, Instant at)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(terms);
        if (at.InZone(mill.Settings.Zone).Date > terms.End || desk.PlanOf(mill, terms, at) is not { Linear: SeasonPlanned { Plan: var plan } } year)
        {
            return null;
        }

        var question = YearQuestion.Of(mill, terms, at);
        if (terms.Arrivals.Any(a => a.Last >= year.Spec.Start))
        {
            return new HarvestYear(terms, year.Spec, question, false, plan, LiesIn(year.Spec.Wheats));
        }

        var next = NextYear.Of(terms);
        var spec = SpecFromTerms.Of(next, terms.End.PlusDays(1), NextYear.Stocks(plan), year.Spec.Homes);
        return new HarvestYear(next, spec, question with { Terms = "next year: " + question.Terms }, true, plan, LiesIn(spec.Wheats));
    }

    private static Dictionary<string, (double, string)> LiesIn(IReadOnlyList<SeasonWheat> wheats) =>
        wheats.Where(w => w.Home.Length > 0 && w.OpeningTonnes > 0).GroupBy(w => w.Home).ToDictionary(g => g.Key, g => (g.Sum(w => w.OpeningTonnes), string.Join(", ", g.Select(w => w.WheatClass).Distinct())));
}
