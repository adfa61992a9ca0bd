using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Mix;
using Evengrist.Records.Season;

namespace Evengrist.Records.Lists;

/// <summary>How each flour follows from its wheat: what is kept, what the newest runs say, and those runs.</summary>
internal static class RelationLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("flour-relations", "How each flour follows from its wheat, flour = intercept + slope · wheat: what is kept, and the newest fit beside it", new ListOf<RelationRecords>()
                .Text("flour", r => r.Flour.Code).Text("name", r => r.Flour.Name).Text("property", r => r.What.Words()).Unit(r => Readings.UnitsOf(r.What)[0])
                .Number("intercept, kept", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Kept?.Relation.Relation.Intercept)).Number("slope, kept", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Kept?.Relation.Relation.Slope)).Number("one standard uncertainty of a flour, kept", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Kept?.Relation.Relation.Uncertainty))
                .Text("basis of the wheat, kept", r => r.Kept?.Relation.Relation.WheatBasis is { IsStated: true } wheat ? wheat.ToString() : "").Text("basis of the flour, kept", r => r.Kept?.Relation.Relation.FlourBasis is { IsStated: true } flour ? flour.ToString() : "")
                .Number("wheat from, kept", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Kept?.Relation.Relation.LeastWheat)).Number("wheat up to, kept", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Kept?.Relation.Relation.MostWheat)).YesNo("kept one was fitted on this mill", r => r.Kept?.Relation.Relation.IsFitted)
                .Text("source of the kept one", r => r.Kept?.Relation.Relation.Source).Whole("version", r => r.Kept?.Version).Text("kept by", r => r.Kept?.By).Moment("kept", r => r.Kept?.Recorded)
                .Whole("runs of the newest fit", r => r.Fit?.Points.Count, null, ListOrigin.Seen).Reckoned("intercept, newest fit", null, r => Fit(r)?.Line.Offset).Reckoned("± 95 % of the intercept", null, r => Fit(r)?.InterceptBand).Reckoned("slope, newest fit", null, r => Fit(r)?.Line.Slope).Reckoned("± 95 % of the slope", null, r => Fit(r)?.SlopeBand)
                .Reckoned("scatter of a run, one standard deviation", null, r => Fit(r)?.Residual).Reckoned("least wheat of the runs", null, r => Fit(r)?.LeastWheat).Reckoned("most wheat of the runs", null, r => Fit(r)?.MostWheat).Text("why there is no fit", r => (r.Fit as RelationNotFitted)?.Reason),
            Rows),
        MillList.Of("relation-runs", "Runs that the fits of flour and wheat rest on", new ListOf<RelationPoint>()
                .Text("flour", p => p.Flour).Text("property", p => p.What.Words()).Text("sheet", p => p.Sheet).Moment("on the rolls from", p => p.At).Unit(p => Readings.UnitsOf(p.What)[0]).Text("basis of the wheat", _ => RelationPoint.WheatBasis.ToString()).Text("basis of the flour", _ => RelationPoint.FlourBasis.ToString())
                .Reckoned("value of the wheat", null, p => p.Wheat).Reckoned("one standard uncertainty of the wheat", null, p => p.WheatUncertainty).Number("value of the flour", ListOrigin.Seen, null, p => UsualColumns.Exact(p.Read)).Reckoned("one standard uncertainty of the flour", null, p => p.ReadUncertainty).Whole("readings", p => p.Readings, null, ListOrigin.Seen),
            (mill, ask) => Rows(mill, ask).SelectMany(r => r.Fit?.Points ?? [])),
    ];

    private static RelationFitted? Fit(RelationRecords of) => of.Fit as RelationFitted;

    private static IEnumerable<RelationRecords> Rows(Mill mill, ListAsk ask) => SeasonShelf.TermsOf(mill) is { Terms: var terms } ? RelationRecords.Of(mill, terms, ask.AsOf).Where(r => ask.Names(r.Flour.Code) && (ask["flour"] is not { Length: > 0 } flour || r.Flour.Code.Equals(flour, StringComparison.OrdinalIgnoreCase))) : [];
}
