using Evengrist.Bins;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Places with their balance, bins, what lies in them, and packages.</summary>
internal static class PlaceLists
{
    private static readonly ListOf<Standing> Balance = new ListOf<Standing>()
        .Text("place", r => r.Place.Code).Text("kind", r => r.Place.Kind.Words()).Text("name", r => r.Place.Name).Text("material", r => r.Place.Material).Text("of", r => r.Place.Of)
        .Mass("in", ListOrigin.Reckoned, r => r.In).Mass("out", ListOrigin.Reckoned, r => r.Out).Mass("stock", ListOrigin.Reckoned, r => r.In - r.Out).YesNo("on hold", r => r.Held);

    private static readonly ListOf<Standing> Bins = new ListOf<Standing>()
        .Text("bin", r => r.Place.Code).Text("kind", r => r.Place.Kind.Words()).Text("name", r => r.Place.Name).Text("material", r => r.Place.Material)
        .Mass("may hold", ListOrigin.Stated, r => r.Place.Capacity).Mass("stock", ListOrigin.Reckoned, r => r.In - r.Out)
        .Reckoned("filled", ListUnit.Percent, r => r.Place.Capacity is { Grams: > 0 } most ? 100d * (r.In - r.Out).Grams / most.Grams : null).YesNo("on hold", r => r.Held);

    private static readonly ListOf<Lying> Layers = new ListOf<Lying>()
        .Text("bin", r => r.Bin.Code).Whole("layer, 1 at the bottom", r => r.Number).Text("how bins are taken to empty", r => r.Outflow).Mass("mass", ListOrigin.Reckoned, r => r.Mass)
        .Moment("lies there since", r => r.Since).Text("loads, most first", r => r.Loads).Text("origins, most first", r => r.Origins);

    private static readonly ListOf<Packed> Packages = new ListOf<Packed>()
        .Text("package", r => r.Place.Code).Text("kind", r => r.Place.Kind.Words()).Text("product", r => r.Place.Material).Mass("mass when filled", ListOrigin.Seen, r => r.Mass)
        .Moment("filling began", r => r.Began).Moment("filled", r => r.Made).Text("filled from", r => r.From).Mass("still here", ListOrigin.Reckoned, r => r.Left).Moment("left", r => r.LeftAt).Text("gone to", r => r.To).YesNo("on hold", r => r.Held);

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("balance", "In, out and stock of every place", Balance, (mill, ask) => Standings(mill, ask, p => ask.Names(p.Code))),
        MillList.Of("bins", "Bins: what they may hold and what lies in them", Bins, (mill, ask) => Standings(mill, ask, p => p.Kind.IsBin() && ask.Names(p.Code))),
        MillList.Of("layers", "Layers in the bins, the lowest first; reckoned under one way of emptying", Layers, LayersOf),
        MillList.Of("packages", "Pallets, bulk loads and totes: what they hold and where they went", Packages, PackagesOf),
    ];

    private static Standing[] Standings(Mill mill, ListAsk ask, Func<Place, bool> which) => mill.Ask(view => view.Book.Places.Where(which).Select(p =>
    {
        var (into, outOf) = view.Book.ThroughputOf(p.Id, ask.AsOf);
        return new Standing(p, into, outOf, view.Book.HoldOn(p.Id, ask.AsOf) is not null);
    }).ToArray());

    private static IEnumerable<Lying> LayersOf(Mill mill, ListAsk ask)
    {
        var outflow = OutflowWords.Read(ask["outflow"]) ?? Outflow.FirstInFirstOut;
        return mill.Ask(view =>
        {
            var reckoning = view.Reckoning(outflow);
            var (snapshot, makeup) = (reckoning.At(ask.AsOf), new MakeupModel(view.Book, reckoning.Parcels));
            return PlaceKinds.All.Where(k => k.IsBin()).SelectMany(view.Book.OfKind).Where(p => ask.Names(p.Code)).SelectMany(bin => In(view.Book, bin, snapshot, makeup, ask.AsOf)).ToArray();
        });
    }

    private static IEnumerable<Lying> In(Book book, Place bin, Snapshot snapshot, MakeupModel makeup, Instant at)
    {
        var layers = snapshot.ContentOf(bin.Id).Where(l => l.Grams > 0).ToArray();
        var stock = book.StockOf(bin.Id, at);
        var masses = layers.Length == 0 || stock <= Mass.Zero ? [] : stock.Split([.. layers.Select(l => l.Grams)]);
        return masses.Select((mass, i) =>
        {
            var made = makeup.Of(layers[i]);
            return new Lying(bin, i + 1, snapshot.Outflow.Words(), mass, snapshot.Parcels[layers[i].Parcel].From, Codes(book, made.Loads), Codes(book, made.Origins));
        });
    }

    private static string Codes(Book book, IEnumerable<PlacePart> parts) => string.Join(", ", parts.Select(p => book[p.Place].Code));

    private static IEnumerable<Packed> PackagesOf(Mill mill, ListAsk ask) => ((PlaceKind[])[PlaceKind.Pallet, PlaceKind.BulkLoad, PlaceKind.ReworkTote])
        .SelectMany(kind => mill.Ask(view => view.Book.OfKind(kind).Where(p => ask.Names(p.Code)).Select(p => Package(view.Book, p, ask)).OfType<Packed>().ToArray()));

    private static Packed? Package(Book book, Place place, ListAsk ask)
    {
        var touched = book.MovementsOf(place.Id).Select(i => book.Movements[i]).Where(m => m.Until <= ask.AsOf).ToArray();
        var into = touched.Where(m => m.To == place.Id).ToArray();
        if (into.Length == 0 || !ask.Holds(into.Max(m => m.Until)))
        {
            return null;
        }

        var left = touched.Where(m => m.From == place.Id && m.Mass > Mass.Zero).Select(m => (Movement?)m).LastOrDefault();
        return new(place, Mass.FromGrams(into.Sum(m => m.Mass.Grams)), into.Min(m => m.At), into.Max(m => m.Until), string.Join(", ", into.Select(m => book[m.From].Code).Distinct()), book.StockOf(place.Id, ask.AsOf),
            left?.At, left is { } gone ? book[gone.To].Code : "", book.HoldOn(place.Id, ask.AsOf) is not null);
    }

    private sealed record Standing(Place Place, Mass In, Mass Out, bool Held);

    private sealed record Lying(Place Bin, long Number, string Outflow, Mass Mass, Instant Since, string Loads, string Origins);

    private sealed record Packed(Place Place, Mass Mass, Instant Began, Instant Made, string From, Mass Left, Instant? LeftAt, string To, bool Held);
}
