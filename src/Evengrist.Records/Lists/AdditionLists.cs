using Evengrist.Quantities.Lists;
using Evengrist.Records.Streams;
using Evengrist.Streams.Additions;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Lots of additives with what is left of them, what feeders gave and where they stood, and enrichment tables.</summary>
internal static class AdditionLists
{
    private const int UsualDays = 60;

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("additive-lots", "Lots of additives that are not used up", new ListOf<(AdditiveStock Stock, LotStock Lot)>()
                .Text("additive", r => r.Stock.Additive).Text("lot", r => r.Lot.Lot.Code).Moment("delivered or counted", r => r.Lot.Found?.At).Number("found then", ListOrigin.Seen, ListUnit.Kilogram, r => r.Lot.Found?.Value * 1000).Text("how", r => r.Lot.Found?.Method)
                .Number("one standard uncertainty", ListOrigin.Stated, ListUnit.Kilogram, r => r.Lot.Found?.StandardUncertainty * 1000).Reckoned("fed since then, or in all where nothing was found", ListUnit.Kilogram, r => r.Lot.FedSince).Moment("fed last", r => r.Lot.LastFed)
                .Reckoned("left", ListUnit.Kilogram, r => r.Lot.LeftKilograms).YesNo("more fed than found", r => r.Lot.IsShort).Reckoned("left of the additive over its lots", ListUnit.Kilogram, r => r.Stock.LeftKilograms)
                .Reckoned($"used of the additive, mean of {AdditiveStock.SpanDays} days", ListUnit.KilogramsPerDay, r => r.Stock.KilogramsPerDay).Moment("the additive lasts until, reckoned", r => r.Stock.LastsUntil),
            (mill, ask) => mill.Ask(view => AdditiveStock.Of(view.Book, ask.AsOf)).SelectMany(s => s.Lots.Select(l => (s, l))).Where(r => ask.Names(r.s.Additive) || ask.Names(r.l.Lot.Code))),
        MillList.Of("feeder-doses", "What feeders put into each bin's flour; of the last 60 days where no span is said", new ListOf<FedDose>()
                .Text("mixer", d => d.Mixer.Code).Text("into", d => d.To.Code).Text("additive", d => d.Additive).Reckoned("flour as it ran", ListUnit.Tonne, d => d.FlourTonnes).Reckoned("fed", ListUnit.Kilogram, d => d.Kilograms).Reckoned("mean dose", ListUnit.GramsPerTonne, d => d.GramsPerTonne, "of flour as it ran").Text("from lots", d => string.Join(", ", d.Lots)),
            (mill, ask) => mill.Ask(view => FeederWatch.Doses(view.Book, From(ask), ask.End)).Where(d => ask.Names(d.Mixer.Code) || ask.Names(d.Additive) || ask.Names(d.To.Code))),
        MillList.Of("feeder-stops", "Flour that ran while a feeder stood, newest first; of the last 60 days where no span is said", new ListOf<FeederStop>()
                .Text("mixer", s => s.Mixer.Code).Text("into", s => s.To.Code).Text("additive that was missing", s => s.Additive).Moment("from", s => s.From).Moment("until", s => s.Until).Mass("flour without", ListOrigin.Reckoned, s => s.Flour).Reckoned("flow", ListUnit.TonnesPerHour, s => s.TonnesPerHour),
            (mill, ask) => mill.Ask(view => FeederWatch.Stops(view.Book, From(ask), ask.End)).Where(s => ask.Names(s.Mixer.Code) || ask.Names(s.Additive) || ask.Names(s.To.Code))),
        MillList.Of("enrichment-tables", "Enrichment tables in use, a row for each nutrient", new ListOf<(int Version, string By, EnrichmentTable Table, NutrientAim Aim)>()
                .Text("market", r => r.Table.Market).Day("holds from", r => r.Table.From).Text("nutrient", r => r.Aim.Name).Number("aim", ListOrigin.Stated, ListUnit.MilligramsPerKilogram, r => (decimal)r.Aim.MilligramsPerKg, "of flour in the end")
                .Text("how well it is known", r => r.Table.Mark.ToString()).Text("source", r => r.Table.Source).Kept(r => r.Version, r => r.By),
            (mill, ask) => KeepEnrichmentTables.Newest(mill) is var (tables, version, by) ? tables.Tables.Where(t => ask.Names(t.Market)).OrderBy(t => t.Market, StringComparer.Ordinal).ThenBy(t => t.From).SelectMany(t => t.Nutrients.Select(n => (version, by, t, n))) : []),
    ];

    private static Instant From(ListAsk ask) => ask.From ?? ask.End - Duration.FromDays(UsualDays);
}
