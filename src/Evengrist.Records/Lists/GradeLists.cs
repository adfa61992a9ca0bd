using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Intake;

namespace Evengrist.Records.Lists;

/// <summary>Limits of grade standards and of the mill's own classes, limits of markets, and the mill's own rules of what it takes.</summary>
internal static class GradeLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("grade-limits", "Limits of grade standards and of the mill's own classes, a row for each factor and grade", new ListOf<(GradeStandard Standard, GradeFactor Factor, int At)>()
                .Text("standard", r => r.Standard.Code).Text("edition", r => r.Standard.Edition).Text("title", r => r.Standard.Title).Text("factor", r => r.Factor.Words).Text("only for", r => string.Join(", ", r.Factor.Only)).Text("not for", r => string.Join(", ", r.Factor.Except))
                .Text("grade", r => r.Standard.Grades[r.At]).Text("the limit is", r => r.Factor.AtLeast ? "the least" : "the most").Number("limit, itself inside", ListOrigin.Stated, null, r => r.Factor.Limits[r.At].Value).YesNo("limit was read", r => r.Factor.Limits[r.At].IsRead)
                .UnitAndBasis(r => r.Factor.Unit, r => r.Factor.MoistureBasis).Text("a per cent is one of", r => r.Factor.Basis.Words()).Number("recorded to", ListOrigin.Stated, null, r => r.Factor.Step).Text("portion", r => r.Factor.Portion)
                .Text("how well it is known", r => r.Factor.Mark.Words()).Text("source", r => r.Factor.Source).Text("note", r => r.Factor.Note),
            (mill, ask) => Standards(mill, ask).SelectMany(s => s.Factors.SelectMany(f => Enumerable.Range(0, Math.Min(f.Limits.Count, s.Grades.Count)).Select(i => (s, f, i))))),
        MillList.Of("house-classes", "The mill's own classes of wheat as they stand", new ListOf<(HouseClass House, Paper Paper)>()
                .Text("class", r => r.House.Code).Whole("version", r => r.House.Version).Text("name", r => r.House.Name).Text("bands, best first", r => string.Join(", ", r.House.Bands)).Text("outside the bands", r => r.House.ToStandard().Below).Text("shown to inspection as", r => r.House.OfficialClass)
                .Text("kept by", r => r.Paper.By).Moment("kept", r => r.Paper.Recorded),
            (mill, ask) => HouseClasses.Newest(mill).Where(h => ask.Names(h.House.Code) && (ask["code"] is not { Length: > 0 } code || h.House.Code.Equals(code, StringComparison.OrdinalIgnoreCase)))),
        MillList.Of("market-limits", "Limits of markets; they change and differ: check the law before anything hangs on one", new ListOf<(Market Market, MarketLimit Limit, bool Holds)>()
                .Text("market", r => r.Market.Code).Text("name", r => r.Market.Name).YesNo("holds for this mill", r => r.Holds).Text("property", r => r.Limit.What.Words()).Text("in", r => r.Limit.Stage == LimitStage.AsReceived ? "wheat as received" : "flour and products")
                .Number("the most, of the goods as they lie", ListOrigin.Stated, null, r => r.Limit.Most).Unit(r => r.Limit.Unit).YesNo("blending down to it is switched on", r => r.Limit.BlendDown).Text("how well it is known", r => r.Limit.Mark.Words()).Text("source", r => r.Limit.Source),
            (mill, ask) => HouseRulesShelf.Of(mill).Markets is var ours ? MarketShelf.All(mill).Where(m => ask.Names(m.Code)).SelectMany(m => m.Limits.Select(l => (m, l, ours.Contains(m.Code, StringComparer.OrdinalIgnoreCase)))) : []),
        MillList.Of("house-rules", "The mill's own rules of what it takes", new ListOf<HouseRule>()
                .Text("property", r => r.What.Words()).Number("below", ListOrigin.Stated, null, r => r.Below).Number("above", ListOrigin.Stated, null, r => r.Above).Unit(r => r.Unit).Text("basis", r => r.Basis).Text("decided then, at least", r => LoadDecision.WordsOf(r.Kind)).Text("why", r => r.Why),
            (mill, _) => HouseRulesShelf.Of(mill).Rules),
    ];

    private static IEnumerable<GradeStandard> Standards(Mill mill, ListAsk ask) => Evengrist.Intake.Grading.Standards.All.Concat(HouseClasses.Newest(mill).Select(h => h.House.ToStandard()))
        .Where(s => ask["standard"] is { Length: > 0 } one ? s.Code.Equals(one, StringComparison.OrdinalIgnoreCase) : ask.Names(s.Code) || ask.Names(s.Code.Replace("house:", "", StringComparison.Ordinal)));
}
