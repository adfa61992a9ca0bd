using Evengrist.Laboratory.Certificates;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Samples;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Samples and what was found on them, lots with their results and decisions, certificates, specifications, checks of instruments, bakes.</summary>
internal static class LaboratoryLists
{
    private const int UsualDays = 31;

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("lab-samples", "Samples of the laboratory", new ListOf<TakenSample>()
                .Text("sample", s => s.Sample.Code).Text("of", s => s.Place.Code).Text("kind of place", s => s.Place.Kind.Words()).Text("material", s => s.Place.Material).Moment("taken", s => s.At).Text("tests", s => string.Join("; ", s.Sample.Tests.Select(t => t.Words)))
                .Text("waiting for", s => string.Join("; ", s.Waiting.Select(t => t.Words))).Text("remark", s => s.Sample.Remark),
            Samples),
        MillList.Of("lab-due", "What the sampling plan asks for at the moment looked at, the longest due first", new ListOf<(PlannedSample Planned, bool Due)>()
                .Text("from", r => r.Planned.Place.Code).Text("kind of place", r => r.Planned.Place.Kind.Words()).Text("line of the plan", r => r.Planned.Line.Code).Moment("due", r => r.Planned.Due).YesNo("due by now", r => r.Due).Text("tests", r => string.Join("; ", r.Planned.Line.Tests.Select(t => t.Words))),
            (mill, ask) => KeepLabPlan.Newest(mill).Plan is var plan ? mill.Ask(view => PlannedSample.Of(plan, view.Book, ask.AsOf)).Where(p => ask.Names(p.Place.Code)).Select(p => (p, p.IsDue(ask.AsOf))) : []),
        MillList.Of("lab-results", "Results on samples of the laboratory, a row for each reading", new ListOf<(TakenSample Sample, Reading Reading)>()
                .Text("sample", r => r.Sample.Sample.Code).Text("of", r => r.Sample.Place.Code).Text("material", r => r.Sample.Place.Material).Moment("taken", r => r.Sample.At).Text("property", r => r.Reading.What.Words()).Number("value as reported", ListOrigin.Seen, null, r => r.Reading.Value)
                .UnitAndBasis(r => r.Reading.Unit, r => r.Reading.Basis).Text("method", r => r.Reading.Method).Text("instrument", r => r.Reading.Instrument)
                .Number("one standard uncertainty", ListOrigin.Stated, null, r => r.Reading.StandardUncertainty),
            (mill, ask) => Samples(mill, ask).SelectMany(s => s.Readings.Select(r => (s, r)))),
        MillList.Of("lots", "Flour lots with what was decided of them", new ListOf<SeenLot>()
                .Text("lot", l => l.Lot.Code).Text("flour", l => l.Lot.Flour).Day("milling day", l => l.Lot.Day).Moment("packed from", l => l.Lot.From).Moment("packed until", l => l.Lot.Until).Mass("packed", ListOrigin.Seen, l => l.Lot.Mass).Whole("packages", l => l.Packages.Count, ListUnit.Piece, ListOrigin.Seen)
                .Whole("still here", l => l.Here, ListUnit.Piece, ListOrigin.Reckoned).Whole("on hold", l => l.Held, ListUnit.Piece, ListOrigin.Reckoned).Mass("gone", ListOrigin.Reckoned, l => l.GoneMass).Text("state", l => l.State.ToString()).Text("specification", l => l.Judged?.Title)
                .Text("decided by", l => l.Decision?.By).Moment("decided", l => l.Decision?.At).Text("reason", l => l.Decision?.Reason),
            Lots),
        MillList.Of("lot-results", "Results of flour lots against their specification, a row for each line", new ListOf<(SeenLot Lot, LotResult Result)>()
                .Text("lot", r => r.Lot.Lot.Code).Text("flour", r => r.Lot.Lot.Flour).Text("specification", r => r.Lot.Judged?.Title).Text("property", r => r.Result.Item.What.Words()).Number("reported", ListOrigin.Seen, null, r => r.Result.Reported).Number("lower limit", ListOrigin.Stated, null, r => r.Result.Item.Lower)
                .Number("upper limit", ListOrigin.Stated, null, r => r.Result.Item.Upper).UnitAndBasis(r => r.Result.Item.Unit, r => r.Result.Item.Basis)
                .Reckoned("chance to be inside", null, r => r.Result.Outcome?.Chance).Text("method", r => r.Result.Method).Text("instrument", r => r.Result.Instrument).Text("out of check", r => r.Result.OutOfCheck).Text("why not judged", r => r.Result.WhyNot),
            (mill, ask) => Lots(mill, ask).SelectMany(l => l.Results.Select(r => (l, r)))),
        MillList.Of("lot-decisions", "Decisions on flour lots", new ListOf<LotDecision>()
                .Text("lot", d => d.Lot).Text("verdict", d => d.Verdict.ToString()).Text("by", d => d.By).Moment("at", d => d.At).Text("reason", d => d.Reason).Text("as", d => d.As).Text("specification", d => d.Specification),
            (mill, ask) => LotDecisions.All(mill).Where(d => ask.Holds(d.At) && ask.Names(d.Lot))),
        MillList.Of("certificates", "Certificates of analysis, a row for each line", new ListOf<(AnalysisCertificate Certificate, CertificateLine Line)>()
                .Text("certificate", r => r.Certificate.Number).Whole("version", r => r.Certificate.Version).Text("product", r => r.Certificate.Product).Text("lot", r => r.Certificate.Lot).Text("customer", r => r.Certificate.Customer).Text("specification", r => r.Certificate.Specification)
                .Number("mass of the lot", ListOrigin.Seen, ListUnit.Tonne, r => r.Certificate.Quantity.LotTonnes).Text("property", r => r.Line.Words).Number("result", ListOrigin.Seen, null, r => r.Line.Result).Text("unit", r => r.Line.Unit).Text("code of the unit", r => r.Line.UnitCode).Text("basis", r => r.Line.Basis)
                .Number("± (k = 2)", ListOrigin.Reckoned, null, r => r.Line.PlusMinus).Number("lower limit", ListOrigin.Stated, null, r => r.Line.Lower).Number("upper limit", ListOrigin.Stated, null, r => r.Line.Upper).YesNo("within", r => r.Line.Within).Text("method", r => r.Line.Method).Text("signed by", r => r.Certificate.SignedBy).Moment("issued", r => r.Certificate.IssuedAt),
            (mill, ask) => IssuedCertificates.All(mill).Where(c => ask.Holds(c.IssuedAt) && (ask.Names(c.Number) || ask.Names(c.Lot))).SelectMany(c => c.Lines.Select(l => (c, l)))),
        MillList.Of("specifications", "Specifications of flours as they stand, a row for each limit", new ListOf<(KeptSpecification Kept, SpecificationItem Item)>()
                .Text("specification", r => r.Kept.Specification.Code).Whole("version", r => r.Kept.Version).Text("flour", r => r.Kept.Specification.Flour).Text("customer", r => r.Kept.Specification.Customer).Text("market", r => r.Kept.Specification.Market).Day("valid from", r => r.Kept.Specification.ValidFrom)
                .Text("property", r => r.Item.What.Words()).Number("lower limit", ListOrigin.Stated, null, r => r.Item.Lower).Number("target", ListOrigin.Stated, null, r => r.Item.Target).Number("upper limit", ListOrigin.Stated, null, r => r.Item.Upper).UnitAndBasis(r => r.Item.Unit, r => r.Item.Basis)
                .Text("method", r => r.Item.Method).YesNo("safety", r => r.Item.Safety).Text("source", r => r.Item.Source).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => FlourSpecifications.Newest(mill).Where(s => ask.Names(s.Specification.Code)).SelectMany(s => s.Specification.Items.Select(i => (s, i)))),
        MillList.Of("instrument-checks", "Checks of instruments against what was known", new ListOf<(Evengrist.Laboratory.Methods.InstrumentCheck Check, string By)>()
                .Text("instrument", r => r.Check.Instrument).Moment("at", r => r.Check.At).Text("property", r => r.Check.What.Words()).Text("sample", r => r.Check.Sample).Number("known", ListOrigin.Stated, null, r => r.Check.Known).Number("found, mean", ListOrigin.Seen, null, r => r.Check.Found.Average())
                .Number("off", ListOrigin.Reckoned, null, r => r.Check.Off).Text("remark", r => r.Check.Remark).Text("by", r => r.By),
            (mill, ask) => InstrumentChecks.All(mill).Where(c => ask.Holds(c.Check.At) && ask.Names(c.Check.Instrument))),
        MillList.Of("bakes", "Test bakes, a row for each loaf", new ListOf<(Evengrist.Laboratory.Bake.BakeSession Session, Evengrist.Laboratory.Bake.BakedLoaf Loaf)>()
                .Text("bake", r => r.Session.Code).Moment("at", r => r.Session.At).Text("baker", r => r.Session.Baker).Text("control", r => r.Session.Control).Text("flour", r => r.Loaf.Flour).Text("dough", r => r.Loaf.Dough).Number("volume", ListOrigin.Seen, ListUnit.Millilitre, r => (decimal)r.Loaf.VolumeMillilitres)
                .Number("weight", ListOrigin.Seen, ListUnit.Gram, r => (decimal)r.Loaf.WeightGrams).Reckoned("specific volume", new ListUnit("mL/g"), r => r.Loaf.SpecificVolume).Number("score", ListOrigin.Seen, null, r => r.Loaf.Score is { } score ? (decimal)score : null).Text("remark", r => r.Session.Remark),
            (mill, ask) => BakeSessions.Newest(mill, ask.AsOf).Where(b => ask.Holds(b.Session.At) && ask.Names(b.Session.Code)).SelectMany(b => b.Session.Loaves.Select(l => (b.Session, l)))),
    ];

    private static IReadOnlyList<TakenSample> Samples(Mill mill, ListAsk ask) => mill.Ask(view => (TakenSample[])[.. TakenSample.Within(view.Book, ask.From ?? Instant.MinValue, ask.End).Where(s => ask.Holds(s.At) && (ask.Names(s.Sample.Code) || ask.Names(s.Place.Code)))]);

    // Lots are looked up by milling days, so many at a time; a month when no span is said.
    private static IEnumerable<SeenLot> Lots(Mill mill, ListAsk ask)
    {
        var last = LotShelf.DayOf(mill, ask.Until is null ? ask.AsOf : ask.End - Duration.Epsilon);
        var first = ask.From is { } from ? LotShelf.DayOf(mill, from) : last.PlusDays(-UsualDays + 1);
        for (var day = first; day <= last; day = day.PlusDays(LotShelf.MostDays))
        {
            foreach (var lot in LotShelf.Of(mill, day, LocalDate.Min(last, day.PlusDays(LotShelf.MostDays - 1)), ask.AsOf).Where(l => ask.Names(l.Lot.Code) || ask.Names(l.Lot.Flour)))
            {
                yield return lot;
            }
        }
    }
}
