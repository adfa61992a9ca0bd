using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Bins;

namespace Evengrist.Records.Lists;

/// <summary>Stored wheat: which bin to look at first, its layers judged, points of cables as they stand, and what was read on them. Advice; nothing here says that grain keeps.</summary>
internal static class StorageLists
{
    private static readonly ListUnit PerWeek = new("°C/week");

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("bin-risks", "Bins with wheat, those to look at first in front; no reason found is no proof of anything", new ListOf<(BinRisk Bin, int Rank)>()
                .Whole("rank", r => r.Rank, null, ListOrigin.Reckoned).Text("bin", r => r.Bin.Bin.Code).Text("class", r => r.Bin.Bin.Material).Reckoned("stock as it lies", ListUnit.Tonne, r => r.Bin.Stored.Tonnes).Text("level", r => r.Bin.Level.ToString()).Text("most pressing", r => r.Bin.Reasons.Select(x => x.Kind.ToString()).FirstOrDefault())
                .Text("reasons, most pressing first", r => string.Join("; ", r.Bin.Reasons.Select(x => x.Words))).Text("rules they rest on", r => string.Join("; ", r.Bin.Reasons.Select(x => x.Source).Distinct())).Reckoned("most life used by a layer, 1 = all", null, r => r.Bin.MostUsed)
                .Reckoned("warmest layer, where read", ListUnit.Celsius, r => r.Bin.Layers.Where(l => l.History.Origin != TemperatureOrigin.Assumed).Max(l => (double?)l.History.Celsius)).Number("CO2 in its air", ListOrigin.Seen, ListUnit.PartsPerMillion, r => (decimal?)r.Bin.Stored.CarbonDioxide?.Ppm, "by volume")
                .Moment("CO2 read", r => r.Bin.Stored.CarbonDioxide?.At).Whole("live weevils in the sample", r => r.Bin.Stored.Insects?.Weevils, ListUnit.Piece, ListOrigin.Seen).Whole("other live insects in the sample", r => r.Bin.Stored.Insects?.Others, ListUnit.Piece, ListOrigin.Seen).Moment("looked for insects", r => r.Bin.Stored.Insects?.At)
                .Moment("aerated last", r => r.Bin.Stored.LastAerated?.At).Text("heights by", r => r.Bin.Stored.LevelsBy),
            (mill, ask) => Risks(mill, ask).Select((b, i) => (b, i + 1))),
        MillList.Of("stored-layers", "Layers of stored wheat as they are judged, bottom first", new ListOf<(BinRisk Bin, LayerRisk Risk, int Number)>()
                .Text("bin", r => r.Bin.Bin.Code).Whole("layer, 1 at the bottom", r => r.Number).Reckoned("mass as it lies", ListUnit.Tonne, r => r.Risk.Layer.Tonnes).Reckoned("from above the floor", ListUnit.Metre, r => r.Risk.Layer.Metres?.From).Reckoned("to above the floor", ListUnit.Metre, r => r.Risk.Layer.Metres?.To).Moment("came, on the mean", r => r.Risk.Layer.Arrived)
                .Reckoned("moisture", ListUnit.Percent, r => r.Risk.Layer.MoisturePercent, "wet basis").Reckoned("moisture of the moistest load", ListUnit.Percent, r => r.Risk.Layer.MoistestPercent, "wet basis").Reckoned("mass whose moisture was read", ListUnit.Percent, r => 100 * r.Risk.Layer.ShareRead)
                .Reckoned("temperature", ListUnit.Celsius, r => r.Risk.History.Celsius).Text("temperature from", r => r.Risk.History.Origin.ToString()).Reckoned("keeps, to plan by", ListUnit.Day, r => (r.Risk.Keeps as StorageDays)?.AlarmDays).Reckoned("life used, 1 = all", null, r => r.Risk.Life?.Used).YesNo("life used is at most that", r => r.Risk.Life?.IsAtMost)
                .Reckoned("until 0.8 is used", ListUnit.Day, r => r.Risk.Life?.DaysToAct).Reckoned("humidity between the kernels", ListUnit.Percent, r => 100 * (r.Risk.Air as Equilibrium)?.Humidity).Text("insects", r => r.Risk.Band.Name).Reckoned("CO2 breathed out, a trend only", new ListUnit("mg/(kg day)"), r => r.Risk.CarbonDioxideMg, "of dry matter"),
            (mill, ask) => Risks(mill, ask).SelectMany(b => b.Layers.Select((l, i) => (b, l, i + 1)))),
        MillList.Of("cable-points", "Points of temperature cables as they stand", new ListOf<(Place Bin, CableState Point)>()
                .Text("bin", r => r.Bin.Code).Text("cable", r => r.Point.Point.Cable).Number("height above the floor", ListOrigin.Stated, ListUnit.Metre, r => r.Point.Point.Metres).Moment("read", r => r.Point.At).Number("temperature", ListOrigin.Seen, ListUnit.Celsius, r => (decimal)r.Point.Celsius)
                .Reckoned("above the median of the bin", ListUnit.Celsius, r => r.Point.AboveMedian).Reckoned("rise", PerWeek, r => r.Point.RisePerWeek).Reckoned("rise of the season", PerWeek, r => r.Point.Season).YesNo("warms faster than the season", r => r.Point.IsRising).YesNo("hot spot", r => r.Point.IsHotSpot),
            (mill, ask) => Risks(mill, ask).SelectMany(b => b.Stored.Cables.Select(c => (b.Bin, c)))),
        MillList.Of("cable-readings", "Temperatures read on cables", new ListOf<(Place Bin, CableReading Read)>()
                .Text("bin", r => r.Bin.Code).Text("cable", r => r.Read.Point.Cable).Number("height above the floor", ListOrigin.Stated, ListUnit.Metre, r => r.Read.Point.Metres).Moment("read", r => r.Read.At).Number("temperature", ListOrigin.Seen, ListUnit.Celsius, r => (decimal)r.Read.Celsius),
            (mill, ask) => mill.Ask(view => view.Book.OfKind(PlaceKind.Bin).Where(b => ask.Names(b.Code)).SelectMany(b => CableReading.Of(view.Book, b.Id, ask.End).Where(c => ask.Holds(c.At)).Select(c => (b, c))).ToArray())),
    ];

    private static IEnumerable<BinRisk> Risks(Mill mill, ListAsk ask) => ask.Of.Length == 0 ? StoredWheat.Of(mill, ask.AsOf).Bins : StoredWheat.Of(mill, ask.Of, ask.AsOf).Risk is { } one ? [one] : [];
}
