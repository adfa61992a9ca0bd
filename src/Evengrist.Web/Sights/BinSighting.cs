using Evengrist.Bins;
using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Looks at bins at one moment; remembers what was read on loads while it looks.</summary>
public sealed class BinSighting
{
    private const double ThinnestBand = 0.06;
    private readonly Book book;
    private readonly Instant at;
    private readonly MillView view;
    private readonly Dictionary<Outflow, (Snapshot Snapshot, MakeupModel Makeup)> hypotheses = [];
    private readonly LoadReadings read;

    /// <summary>A look at a moment; a hypothesis is reckoned when it is first asked for.</summary>
    public BinSighting(MillView view, Instant at) => (this.view, book, this.at, read) = (view, view.Book, at, new LoadReadings(view.Book, at));

    /// <summary>What is posed to be drawn where it is asked what comes out next.</summary>
    public static Mass DrawPosed { get; } = Mass.FromTonnes(25m);

    /// <summary>Bands, shapes and the like; null where they are not asked for.</summary>
    public BinShelf? Shelf { get; init; }

    /// <summary>A bin with its layers under one hypothesis and what comes out next under each.</summary>
    public BinSight Look(Place place, Outflow outflow)
    {
        var bin = Glance(place);
        var layers = Layers(place, outflow, bin.Stock);
        var band = Shelf?.BandOf(place.Code);
        return bin with
        {
            Band = band,
            Quality = layers.Count == 0 ? null : BinQuality.Of(Under(outflow).Makeup.Of([.. layers.Select(l => l.Layer)]), QualityOf, band),
            Oldest = layers.Count == 0 ? null : layers.Min(l => l.Sight.From),
            MeanSince = layers.Count == 0 ? null : at - Duration.FromHours(layers.Sum(l => l.Layer.Grams * (at - l.Sight.From).TotalHours) / layers.Sum(l => l.Layer.Grams)),
            Bands = [.. Bands(layers, place.Capacity ?? bin.Stock, outflow)],
            Protein = ProteinOf([.. layers.Select(l => l.Layer)], outflow),
            Next = [.. OutflowWords.All.Select(o => NextOf(place, o))],
        };
    }

    /// <summary>A bin without its layers: stock, hold and state.</summary>
    public BinSight Glance(Place place)
    {
        var (into, outOf) = book.ThroughputOf(place.Id, at);
        return new BinSight(place, book.StockOf(place.Id, at), into, outOf)
        {
            Standing = BinStateModel.Of(book, place.Id, at),
            Warmest = book.ReadingsOn(place.Id).Where(r => r.What == Property.Temperature && r.At <= at && r.At > at - Duration.FromDays(7)).MaxBy(r => r.Value),
        };
    }

    private List<(Layer Layer, LayerSight Sight)> Layers(Place place, Outflow outflow, Mass stock)
    {
        var (snapshot, makeup) = Under(outflow);
        var layers = snapshot.ContentOf(place.Id).Where(l => l.Grams > 0).ToArray();
        if (layers.Length == 0 || stock <= Mass.Zero)
        {
            return [];
        }

        var masses = stock.Split([.. layers.Select(l => l.Grams)]);
        return [.. layers.Zip(masses, (layer, mass) =>
        {
            var made = makeup.Of(layer);
            return (layer, new LayerSight(layer.Parcel, mass, snapshot.Parcels[layer.Parcel].From, OriginWords.Grouped(book, made), Codes(made.Loads), Codes(made.Origins), BlendProtein.Of(made, read.Test)));
        })];
    }

    // Layers of one district are one band; bands too thin to be told apart on a drawing are drawn together, as what they are on the whole.
    private IEnumerable<Band> Bands(List<(Layer Layer, LayerSight Sight)> layers, Mass whole, Outflow outflow)
    {
        var thin = whole.Grams * ThinnestBand;
        for (var i = 0; i < layers.Count;)
        {
            var run = Run(layers, i);
            var end = i + run;
            long grams = Grams(layers, i, end);
            while (grams < thin && end < layers.Count && Grams(layers, end, end + Run(layers, end)) is var more && more < thin)
            {
                (end, grams) = (end + Run(layers, end), grams + more);
            }

            var band = layers[i..end];
            var groups = OriginWords.Grouped(book, Under(outflow).Makeup.Of([.. band.Select(l => l.Layer)]));
            yield return new Band(OriginWords.Leading(groups), groups, Mass.FromGrams(grams), [.. band.Select(l => l.Sight)], ProteinOf([.. band.Select(l => l.Layer)], outflow));
            i = end;
        }
    }

    private static int Run(List<(Layer Layer, LayerSight Sight)> layers, int from)
    {
        var origin = OriginWords.Leading(layers[from].Sight.Groups);
        return layers.Skip(from).TakeWhile(l => OriginWords.Leading(l.Sight.Groups) == origin).Count();
    }

    private static long Grams(List<(Layer Layer, LayerSight Sight)> layers, int from, int end) => layers[from..end].Sum(l => l.Sight.Mass.Grams);

    private NextOut NextOf(Place place, Outflow outflow)
    {
        var (snapshot, makeup) = Under(outflow);
        var layers = snapshot.NextOut(place.Id, DrawPosed);
        var made = makeup.Of(layers);
        return new NextOut(outflow, Mass.FromGrams((long)layers.Sum(l => l.Grams)), OriginWords.Grouped(book, made), Codes(made.Loads), BlendProtein.Of(made, read.Test));
    }

    private BlendProtein? ProteinOf(IReadOnlyList<Layer> layers, Outflow outflow) => BlendProtein.Of(Under(outflow).Makeup.Of(layers), read.Test);

    private (Snapshot Snapshot, MakeupModel Makeup) Under(Outflow outflow)
    {
        if (!hypotheses.TryGetValue(outflow, out var known))
        {
            var reckoning = view.Reckoning(outflow);
            hypotheses.Add(outflow, known = (reckoning.At(at), new MakeupModel(book, reckoning.Parcels)));
        }

        return known;
    }

    /// <summary>What was read on a load.</summary>
    public LoadQuality QualityOf(PlaceId load) => read.Quality(load);

    private string[] Codes(IReadOnlyList<PlacePart> parts) => [.. parts.Select(p => book[p.Place].Code)];
}
