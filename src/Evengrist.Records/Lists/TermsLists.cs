using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Season;
using Evengrist.Season.Terms;

namespace Evengrist.Records.Lists;

/// <summary>Terms of the crop year as they stand: what is wanted of each flour, its limits, wheat on offer and wheat that is expected.</summary>
internal static class TermsLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("season-demand", "Terms of the crop year: what is wanted of each flour, its usual week first, then weeks in which another amount is", new ListOf<(FlourTerms Flour, DemandTerms? Peak, SeasonTerms Terms, int Version)>()
                .Text("flour", r => r.Flour.Code).Text("name", r => r.Flour.Name).Text("mill unit", r => r.Flour.Unit).Day("from", r => r.Peak?.From).Day("to", r => r.Peak?.To ?? r.Terms.End).Number("wanted in a week", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Peak?.TonnesPerWeek ?? r.Flour.TonnesPerWeek))
                .Number("flour of the wheat", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(100 * r.Flour.Yield)).Number("may lie in store", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Flour.StockMost)).Number("is to stay in store", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Flour.StockLeast))
                .Number("a tonne not made costs", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Flour.UnmetPricePerTonne)).Text("currency", r => r.Terms.Currency).Text("classes that may go into it, all where empty", r => string.Join(", ", r.Flour.Classes)).Whole("version of the terms", r => r.Version),
            (mill, ask) => Of(mill, (t, v) => t.Flours.Where(f => ask.Names(f.Code)).SelectMany(f => f.Peaks.Select(p => (DemandTerms?)p).Prepend(null).Select(p => (f, p, t, v))))),
        MillList.Of("season-limits", "Terms of the crop year: limits on the wheat of each flour", new ListOf<(FlourTerms Flour, LimitTerms Limit, SeasonTerms Terms, int Version)>()
                .Text("flour", r => r.Flour.Code).Text("property", r => r.Limit.What.Words()).Number("the least", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Limit.Least)).Number("the most", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Limit.Most)).UnitAndBasis(r => Readings.UnitsOf(r.Limit.What)[0], r => r.Limit.Basis)
                .Number("one unit beyond costs, of each tonne of the mix", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Limit.MissPrice)).Text("currency", r => r.Terms.Currency).Whole("version of the terms", r => r.Version),
            (mill, ask) => Of(mill, (t, v) => t.Flours.Where(f => ask.Names(f.Code)).SelectMany(f => f.Limits.Select(l => (f, l, t, v))))),
        MillList.Of("season-offers", "Terms of the crop year: wheat that can be bought, a row for each step of its price", new ListOf<(OfferTerms Offer, TierTerms Step, int Number, SeasonTerms Terms, int Version)>()
                .Text("offer", r => r.Offer.Code).Text("class", r => r.Offer.WheatClass).Text("from whom", r => r.Offer.From).Day("from", r => r.Offer.First).Day("to", r => r.Offer.Last).Number("in all", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Offer.TotalTonnes)).Number("moisture", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Offer.MoisturePercent), "wet basis")
                .Text("expected to be", r => Quality(r.Offer.Quality)).Whole("step", r => r.Number).Number("in a week, up to", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Step.TonnesPerWeek)).Number("price of a tonne, delivered", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Step.PricePerTonne)).Text("currency", r => r.Terms.Currency).Whole("version of the terms", r => r.Version),
            (mill, ask) => Of(mill, (t, v) => t.Offers.Where(o => ask.Names(o.Code)).SelectMany(o => o.Tiers.Select((s, i) => (o, s, i + 1, t, v))))),
        MillList.Of("season-arrivals", "Terms of the crop year: wheat that is expected", new ListOf<(ArrivalTerms Arrival, int Version)>()
                .Text("arrival", r => r.Arrival.Code).Text("district", r => r.Arrival.District).Text("class", r => r.Arrival.WheatClass).Day("from", r => r.Arrival.First).Day("to", r => r.Arrival.Last).Number("in all", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Arrival.Tonnes)).Number("one standard deviation of it", ListOrigin.Stated, ListUnit.Tonne, r => UsualColumns.Exact(r.Arrival.TonnesSpread))
                .Number("moisture", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Arrival.MoisturePercent), "wet basis").Text("expected to be", r => Quality(r.Arrival.Quality)).Whole("version of the terms", r => r.Version),
            (mill, ask) => Of(mill, (t, v) => t.Arrivals.Where(a => ask.Names(a.Code)).Select(a => (a, v)))),
    ];

    private static IEnumerable<T> Of<T>(Mill mill, Func<SeasonTerms, int, IEnumerable<T>> rows) => SeasonShelf.TermsOf(mill) is var (terms, version) ? rows(terms, version) : [];

    private static string Quality(IReadOnlyList<QualityTerms> quality) => string.Join("; ", quality.Select(q => FormattableString.Invariant($"{q.What.Words()} {q.Value:0.###} ± {q.Spread:0.###} {Readings.UnitsOf(q.What)[0]}{(q.Basis.IsStated ? " " + q.Basis : "")}")));
}
