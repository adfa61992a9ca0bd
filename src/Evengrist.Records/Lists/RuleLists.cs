using Evengrist.Bins.Storage;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.Rework;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Bins;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Packing.Rework;
using Evengrist.Records.Tempering;
using Evengrist.Tempering;

namespace Evengrist.Records.Lists;

/// <summary>Tables and rules that the mill keeps by version: aims of tempering, constants of storage, rules of the ramp and of rework.</summary>
internal static class RuleLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("temper-aims", "Aims of tempering in use, a row for each hardness", new ListOf<(TemperAims Aims, TemperAim Aim, int Version, string By)>()
                .Text("hardness", r => r.Aim.Hardness.Words()).Number("at first break, least", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Aim.LeastPercent), "wet basis").Number("at first break, most", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Aim.MostPercent), "wet basis").Text("moistures are known", r => r.Aim.MoistureMark.Words())
                .Number("rest, shortest", ListOrigin.Stated, ListUnit.Hour, r => UsualColumns.Exact(r.Aim.LeastHours)).Number("rest, longest", ListOrigin.Stated, ListUnit.Hour, r => UsualColumns.Exact(r.Aim.MostHours)).Text("hours are known", r => r.Aim.RestMark.Words()).Text("classes", r => string.Join(", ", r.Aims.Classes.Where(c => c.Value == r.Aim.Hardness).Select(c => c.Key)))
                .Number("evaporation to first break, the mill's own", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Aims.EvaporationPercent), "of the tempered mass").Text("source", r => r.Aim.Source).Kept(r => r.Version, r => r.By),
            (mill, _) => KeepTemperAims.Newest(mill) is var (aims, version, by) ? aims.Aims.Select(a => (aims, a, version, by)) : []),
        MillList.Of("storage-constants", "Constants of the equilibrium of wheat and air in use; look a standard up before you rely on a line that is not verified", new ListOf<(EmcTable Table, EmcConstants Line, int Version, string By)>()
                .Text("wheat", r => r.Line.Wheat).Text("equation", r => r.Line.Form.Words()).Number("A", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Line.A)).Number("B", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Line.B)).Number("C", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Line.C)).Text("how well it is known", r => r.Line.Mark.Words())
                .Number("meant for, from", ListOrigin.Stated, ListUnit.Celsius, r => UsualColumns.Exact(r.Line.LeastCelsius)).Number("meant for, up to", ListOrigin.Stated, ListUnit.Celsius, r => UsualColumns.Exact(r.Line.MostCelsius)).Number("meant for humidity from", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(100 * r.Line.LeastHumidity)).Number("meant for humidity up to", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(100 * r.Line.MostHumidity))
                .Text("bins of these classes are judged by it", r => string.Join(", ", r.Table.Classes.Where(c => r.Table.OfClass(c.Key) == r.Line).Select(c => c.Key))).Text("source", r => r.Line.Source).Kept(r => r.Version, r => r.By),
            (mill, _) => KeepEmcConstants.Newest(mill) is var (table, version, by) ? table.Constants.Select(c => (table, c, version, by)) : []),
        MillList.Of("dispatch-rules", "Rules of the ramp: the check list, what a trailer may have carried before, seals, persons", new ListOf<(string Sort, string Code, string Says, int Version, string By)>()
                .Text("sort", r => r.Sort).Text("what", r => r.Code).Text("says", r => r.Says).Kept(r => r.Version, r => r.By),
            (mill, _) => KeepDispatchRules.Newest(mill) is var (rules, version, by) ? Of(rules).Select(r => (r.Sort, r.Code, r.Says, version, by)) : []),
        MillList.Of("rework-rules", "Rules of rework", new ListOf<(string Sort, string Of, string Says, double? Number, ListUnit? Unit, int Version, string By)>()
                .Text("sort", r => r.Sort).Text("of", r => r.Of).Text("says", r => r.Says).Number("number", ListOrigin.Stated, null, r => UsualColumns.Exact(r.Number)).Text("unit", r => r.Unit?.Symbol).Text("UN/ECE code of the unit", r => r.Unit?.Code).Kept(r => r.Version, r => r.By),
            (mill, _) => KeepReworkRules.Newest(mill) is var (rules, version, by) ? Of(rules).Select(r => (r.Sort, r.Of, r.Says, r.Number, r.Unit, version, by)) : []),
    ];

    private static IEnumerable<(string Sort, string Code, string Says)> Of(DispatchRules rules) =>
    [
        .. rules.Points.Select(p => ("check list", p.Code, p.Words + (p.OnlyTankers ? " (tankers)" : ""))),
        .. rules.Previous.Select(p => ("carried before", p.What, p.Verdict switch { PreviousVerdict.Good => "flour may follow", PreviousVerdict.AfterWash => "after a wash, with a ticket", _ => "never" })),
        ("seals", "", rules.NeedsSeals ? "a load leaves only with seals" : "a load may leave without seals"),
        ("flour of a lot nobody has released", "", rules.RefusesUndecided ? "stays here" : "is asked about, with a reason"),
        .. rules.Persons.Select(p => ("may send off", p, "")),
    ];

    private static IEnumerable<(string Sort, string Of, string Says, double? Number, ListUnit? Unit)> Of(ReworkRules rules) =>
    [
        ("age after which it is asked about", "", "", rules.MostDays, ListUnit.Day),
        ("most of a run", "", "of the run's mass", rules.MostPercent, ListUnit.Percent),
        .. rules.Doses.Select(d => ("most of a run", d.Flour, "of the run's mass", (double?)d.MostPercent, (ListUnit?)ListUnit.Percent)),
        .. rules.Matches.Select(m => ("may go into another flour", m.Of, m.Into, (double?)null, (ListUnit?)null)),
        .. rules.Carriers.Select(c => ("carries allergens", c.Additive, string.Join(", ", c.Allergens), (double?)null, (ListUnit?)null)),
        .. rules.Premixes.Select(p => ("enriches; a full dose", p.Additive, "of flour", (double?)p.GramsPerTonne, (ListUnit?)ListUnit.GramsPerTonne)),
    ];
}
