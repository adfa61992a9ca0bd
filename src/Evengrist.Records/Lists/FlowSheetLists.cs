using Evengrist.Milling.Sheet;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Milling;

namespace Evengrist.Records.Lists;

/// <summary>Passages of flow sheets as they are set, and the ways from their outlets.</summary>
internal static class FlowSheetLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("flow-sheet-passages", "Passages of flow sheets; of each unit the newest version where none is said", Head<(KeptFlowSheet Kept, Passage Passage)>(r => r.Kept)
                .Text("passage", r => r.Passage.Code).Text("kind", r => r.Passage.Kind.ToString()).YesNo("takes the wheat", r => r.Passage.Code == r.Kept.Sheet.FirstBreak).Number("roll gap", ListOrigin.Stated, ListUnit.Micrometre, r => (decimal?)r.Passage.Rolls?.GapMicrometres)
                .Number("roll length", ListOrigin.Stated, ListUnit.Millimetre, r => (decimal?)r.Passage.Rolls?.LengthMillimetres).Number("flutes", ListOrigin.Stated, ListUnit.PerCentimetre, r => (decimal?)r.Passage.Rolls?.FlutesPerCentimetre).Text("how flutes meet", r => r.Passage.Rolls is { IsFluted: true } rolls ? rolls.Disposition.ToString() : "")
                .Number("differential, fast over slow", ListOrigin.Stated, null, r => (decimal?)r.Passage.Rolls?.Differential).Number("speed of the fast roll", ListOrigin.Stated, ListUnit.MetresPerSecond, r => (decimal?)r.Passage.Rolls?.FastMetresPerSecond).YesNo("detacher", r => r.Passage.Detacher)
                .Number("cloth area", ListOrigin.Stated, ListUnit.SquareMetre, r => (decimal)r.Passage.ClothSquareMetres).Number("air through the cloths", ListOrigin.Stated, ListUnit.MetresPerSecond, r => (decimal?)r.Passage.AirMetresPerSecond)
                .Text("cloths", r => string.Join("; ", r.Passage.Cloths.Select(c => c.Words))),
            (mill, ask) => Sheets(mill, ask).SelectMany(k => k.Sheet.Passages.Select(p => (k, p)))),
        MillList.Of("flow-sheet-ways", "Where the outlets of passages lead, a row for each way; of each unit the newest version where none is said", Head<(KeptFlowSheet Kept, Passage From, int Outlet, Spout Spout)>(r => r.Kept)
                .Text("passage", r => r.From.Code).Whole("outlet", r => r.Outlet + 1).Text("what leaves", r => What(r.From, r.Outlet)).Number("opening of the cloth", ListOrigin.Stated, ListUnit.Micrometre, r => (decimal?)Cloth(r.From, r.Outlet)?.ApertureMicrometres).Text("note on the cloth", r => Cloth(r.From, r.Outlet)?.Note)
                .Text("leads to", r => r.Spout.To).Text("which is", r => r.Kept.Sheet.Products.FirstOrDefault(p => p.Code == r.Spout.To)?.Kind.ToString() ?? "passage").Number("share of the outlet", ListOrigin.Stated, ListUnit.Percent, r => 100 * (decimal)r.Spout.Share),
            (mill, ask) => Sheets(mill, ask).SelectMany(k => k.Sheet.Ways.Select(w => (k, w.From, w.Outlet, w.Spout)))),
    ];

    private static ListOf<T> Head<T>(Func<T, KeptFlowSheet> of) => new ListOf<T>().Text("mill unit", r => of(r).Unit).Whole("version", r => of(r).Version).Text("kept by", r => of(r).By).Moment("kept", r => of(r).Recorded);

    // Lifted stock leaves before the cloths, the rest behind them.
    private static Cloth? Cloth(Passage passage, int outlet) => passage.Cloths.ElementAtOrDefault(outlet - (passage.Lifted.Count > 0 ? 1 : 0));

    private static string What(Passage passage, int outlet) => passage.Lifted.Count > 0 && outlet == 0 ? "lifted by the air" : Cloth(passage, outlet)?.Words ?? "rest";

    private static IEnumerable<KeptFlowSheet> Sheets(Mill mill, ListAsk ask)
    {
        var unit = ask.Of.Length > 0 ? ask.Of : ask["unit"];
        return int.TryParse(ask["version"], System.Globalization.CultureInfo.InvariantCulture, out var version) && unit.Length > 0 ? FlowSheets.Versions(mill, unit).Where(k => k.Version == version)
            : FlowSheets.Newest(mill).Where(k => unit.Length == 0 || k.Unit.Equals(unit, StringComparison.OrdinalIgnoreCase));
    }
}
