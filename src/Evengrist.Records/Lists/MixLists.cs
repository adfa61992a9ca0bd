using Evengrist.Mix.Sheets;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Mix;
using Evengrist.Records.Tempering;

namespace Evengrist.Records.Lists;

/// <summary>Mix sheets gate by gate, relations of mix and flour, and what was done at temper bins.</summary>
internal static class MixLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("mix-sheets", "Mix sheets as they stand, a row for each gate", new ListOf<(KeptSheet Kept, SheetGate Gate)>()
                .Text("sheet", r => r.Kept.Code).Whole("version", r => r.Kept.Version).Text("mix line", r => r.Kept.Sheet.Line).Text("flour", r => r.Kept.Sheet.Flour).Moment("from", r => r.Kept.Sheet.From).Moment("until", r => r.Kept.Sheet.Until)
                .Number("set rate", ListOrigin.Stated, ListUnit.TonnesPerHour, r => UsualColumns.Exact(r.Kept.Sheet.TonnesPerHour)).Text("bin", r => r.Gate.Bin).Text("class", r => r.Gate.Class).Number("share of the mix", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Gate.SharePercent))
                .Number("gate dial", ListOrigin.Stated, ListUnit.TonnesPerHour, r => UsualColumns.Exact(r.Gate.DialTonnesPerHour)).Reckoned("best share", ListUnit.Percent, r => r.Kept.Sheet.Best.TryGetValue(r.Gate.Bin, out var best) ? best : null)
                .Text("set by", r => r.Kept.Sheet.SetBy).Text("reason", r => r.Kept.Sheet.Reason).Text("withdrawn", r => r.Kept.Sheet.Withdrawn).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => MixSheets.Newest(mill).Where(s => (ask.From is null || s.Sheet.Until > ask.From) && (ask.Until is null || s.Sheet.From < ask.Until) && ask.Names(s.Code)).SelectMany(s => s.Sheet.Gates.Select(g => (s, g)))),
        MillList.Of("mix-drawn", "What was set on mix sheets beside what was drawn by the ledger, a row for each gate", new ListOf<(SheetDraws Sheet, DrawnAgainstSheet Against, DrawnGate Gate)>()
                .Text("sheet", r => r.Sheet.Kept.Code).Text("mix line", r => r.Sheet.Kept.Sheet.Line).Text("flour", r => r.Sheet.Kept.Sheet.Flour).Moment("from", r => r.Sheet.Kept.Sheet.From).Moment("until", r => r.Sheet.Kept.Sheet.Until).Reckoned("wheat was drawn over", ListUnit.Hour, r => r.Against.Hours).Text("bin", r => r.Gate.Bin)
                .Number("set share", ListOrigin.Stated, ListUnit.Percent, r => UsualColumns.Exact(r.Gate.SetPercent)).Number("drawn share", ListOrigin.Seen, ListUnit.Percent, r => UsualColumns.Exact(r.Gate.DrawnPercent)).Reckoned("one standard uncertainty of the drawn share, by the weighers", ListUnit.Percent, r => r.Gate.DrawnUncertainty)
                .Reckoned("set mass", ListUnit.Tonne, r => r.Gate.SetTonnes).Number("drawn mass", ListOrigin.Seen, ListUnit.Tonne, r => UsualColumns.Exact(r.Gate.DrawnTonnes)).YesNo("further apart than the weighers explain", r => r.Gate.IsBeyondWeighers),
            (mill, ask) => SheetRecords.Of(mill, ask.AsOf, toCome: false).Sheets.Where(s => ask.Spans(s.Kept.Sheet.From) && ask.Names(s.Kept.Code) && (ask["sheet"] is not { Length: > 0 } one || s.Kept.Code.Equals(one, StringComparison.OrdinalIgnoreCase)))
                .SelectMany(s => s.Against is { } against ? against.Gates.Select(g => (s, against, g)) : [])),
        MillList.Of("temper-log", "What people did at temper bins, newest first", new ListOf<(string Bin, FactId Id, Happening Happening, string By)>()
                .Whole("no.", r => r.Id.Value).Text("temper bin", r => r.Bin).Moment("happened", r => r.Happening.At).Text("what", r => r.Happening.Kind.ToString()).Text("words", r => r.Happening.Words).Text("particulars as JSON", r => r.Happening.Particulars).Text("recorded by", r => r.By),
            (mill, ask) => mill.Ask(view => view.Book.OfKind(PlaceKind.TemperBin).Select(p => p.Code).Where(ask.Names).ToArray()).SelectMany(bin => TemperLog.Of(mill, bin, ask.AsOf, 1000).Where(l => ask.Holds(l.Happening.At)).Select(l => (bin, l.Id, l.Happening, l.By)))),
    ];
}
