using Evengrist.Laboratory;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Laboratory;

namespace Evengrist.Records.Lists;

/// <summary>Methods of the laboratory, its instruments with how they stand and how they were set, what was found wrong, legal rules and rules of release.</summary>
internal static class MethodLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("lab-methods", "Methods of the laboratory in use, with how far two results may differ", new ListOf<(LabMethod Method, OwnRepeatability? Own, int Version, string By)>()
                .Text("method", r => r.Method.Code).Text("property", r => r.Method.What.Words()).UnitAndBasis(r => r.Method.Unit, r => r.Method.Basis).YesNo("reference", r => r.Method.IsReference)
                .Number("r, absolute", ListOrigin.Stated, null, r => r.Method.Repeatability?.Absolute).Number("r, of the mean", ListOrigin.Stated, ListUnit.Percent, r => r.Method.Repeatability?.PercentOfMean).Text("r is known", r => r.Method.Repeatability?.Mark.Words()).Text("source of r", r => r.Method.Repeatability?.Source)
                .Number("R, absolute", ListOrigin.Stated, null, r => r.Method.Reproducibility?.Absolute).Number("R, of the mean", ListOrigin.Stated, ListUnit.Percent, r => r.Method.Reproducibility?.PercentOfMean).Text("R is known", r => r.Method.Reproducibility?.Mark.Words()).Text("source of R", r => r.Method.Reproducibility?.Source)
                .Reckoned("r by own duplicates", null, r => r.Own?.Limit).Whole("degrees of freedom of it", r => r.Own?.Freedom, null, ListOrigin.Reckoned).Reckoned("their mean", null, r => r.Own?.Mean).Number("asked about beyond the last", ListOrigin.Stated, null, r => r.Method.OddBeyond).Kept(r => r.Version, r => r.By),
            (mill, ask) => KeepLabMethods.Newest(mill) is var (methods, version, by) && OwnDuplicates.Of(mill, methods, ask.AsOf) is var own ? methods.Methods.Where(m => ask.Names(m.Code)).Select(m => (m, (OwnRepeatability?)own.FirstOrDefault(o => o.Method == m).Own, version, by)) : []),
        MillList.Of("lab-instruments", "Instruments of the laboratory and how they stand by their check samples", new ListOf<(InstrumentStanding Standing, int Version, string By)>()
                .Text("instrument", r => r.Standing.Instrument.Code).Text("name", r => r.Standing.Instrument.Name).Text("methods", r => string.Join(", ", r.Standing.Instrument.Methods)).Text("state", r => r.Standing.Words).Text("why", r => r.Standing.Why).Moment("checked last", r => r.Standing.Last?.At).Moment("next check", r => r.Standing.Due)
                .Number("a check is good for", ListOrigin.Stated, ListUnit.Hour, r => UsualColumns.Exact(r.Standing.Instrument.CheckEveryHours)).Text("a check sample may be off by", r => string.Join("; ", r.Standing.Instrument.Tolerances.Select(t => FormattableString.Invariant($"{t.What.Words()} {t.Within} {Readings.UnitsOf(t.What)[0]}, {t.Mark.Words()}")))).Kept(r => r.Version, r => r.By),
            (mill, ask) => KeepLabInstruments.Newest(mill) is var (kept, version, by) && InstrumentChecks.All(mill).Select(c => c.Check).ToArray() is var checks ? kept.Instruments.Where(i => ask.Names(i.Code)).Select(i => (InstrumentStanding.Of(i, checks, ask.AsOf), version, by)) : []),
        MillList.Of("instrument-calibrations", "How instruments were set, a row for each setting", new ListOf<(LabInstrument Instrument, InstrumentCalibration Set, bool InForce)>()
                .Text("instrument", r => r.Instrument.Code).Text("property", r => r.Set.What.Words()).Day("from", r => r.Set.From).YesNo("in force", r => r.InForce).Number("slope", ListOrigin.Stated, null, r => r.Set.Slope).Number("bias, added then", ListOrigin.Stated, null, r => r.Set.Bias).Unit(r => Readings.UnitsOf(r.Set.What)[0])
                .Text("applied", r => r.Set.Applied == AppliedWhere.Here ? "here" : "in the instrument").Text("set by", r => r.Set.By).Text("remark", r => r.Set.Remark),
            (mill, ask) => ask.AsOf.InZone(ask.Zone).Date is var day ? KeepLabInstruments.Newest(mill).Instruments.Instruments.Where(i => ask.Names(i.Code)).SelectMany(i => i.Calibrations.Select(c => (i, c, i.CalibrationOn(c.What, day) == c))) : []),
        MillList.Of("found-wrong", "Instruments that were found to have read wrong: from then on those readings speak for no lot", new ListOf<FoundWrong>()
                .Text("instrument", f => f.Span.Instrument).Text("property", f => f.Span.What.Words()).Moment("wrong since", f => f.Span.From).Moment("right again at", f => f.Span.Until).Number("read too high by", ListOrigin.Stated, null, f => UsualColumns.Exact(f.Span.Bias)).Number("one standard uncertainty of it", ListOrigin.Stated, null, f => UsualColumns.Exact(f.Span.Uncertainty))
                .Text("found by", f => f.By).Moment("found", f => f.At),
            (mill, ask) => InstrumentsFoundWrong.All(mill).Where(f => f.At <= ask.AsOf && ask.Names(f.Span.Instrument)).OrderByDescending(f => f.Span.From)),
        MillList.Of("legal-rules", "Legal rules the mill works by: data, no advice on law; check the text in force", new ListOf<(LegalRule Rule, int Version, string By)>()
                .Text("market", r => r.Rule.Market).Text("limits", r => r.Rule.Of).Text("property", r => r.Rule.What?.Words()).Number("the least", ListOrigin.Stated, null, r => r.Rule.Lower).Number("the most", ListOrigin.Stated, null, r => r.Rule.Upper).YesNo("the most goes by the protein", r => r.Rule.IsAshByProtein)
                .UnitAndBasis(r => r.Rule.Unit, r => r.Rule.Basis).YesNo("of flour as it leaves the mill", r => r.Rule.ForFlour).YesNo("binds by law", r => r.Rule.IsBinding).Day("since", r => r.Rule.ValidFrom).Text("a lot outside", r => r.Rule.Otherwise).YesNo("from memory", r => r.Rule.FromMemory).Text("source", r => r.Rule.Source).Kept(r => r.Version, r => r.By),
            (mill, ask) => KeepLegalRules.Newest(mill) is var (rules, version, by) ? rules.Rules.Where(r => ask.Names(r.Market)).Select(r => (r, version, by)) : []),
        MillList.Of("release-rules", "What makes a lot, which readings speak for it, and who may decide", new ListOf<(ReleaseRules Rules, int Version, string By)>()
                .Whole("lots of a flour in a milling day", r => r.Rules.PartsOfDay).Whole("rolls to package", r => r.Rules.LagMinutes, ListUnit.Minute).Text("made into lots, all where empty", r => string.Join(", ", r.Rules.Products)).Text("unit readings of these methods, all where empty", r => string.Join("; ", r.Rules.UnitMethods))
                .Number("release advised from, chance inside of every line", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(100 * r.Rules.Policy)).Text("may decide", r => string.Join(", ", r.Rules.Persons)).Kept(r => r.Version, r => r.By),
            (mill, _) => [KeepReleaseRules.Newest(mill)]),
    ];
}
