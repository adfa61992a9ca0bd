using Evengrist.Ledger.Reckoned;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>What is reckoned to lie in every place at one moment, under one outflow hypothesis.</summary>
public sealed class Snapshot
{
    private readonly Dictionary<int, Content> contents;

    internal Snapshot(Instant at, Outflow outflow, ParcelGraph parcels, Run run)
    {
        At = at;
        Outflow = outflow;
        Parcels = parcels;
        contents = run.Lying().ToDictionary(l => l.Place, l => l.Content);
        Arriving = run.Arriving().Select(a => (new PlaceId(a.Place), (IReadOnlyList<Layer>)a.Layers)).ToArray();
    }

    /// <summary>The moment.</summary>
    public Instant At { get; }

    /// <summary>The hypothesis.</summary>
    public Outflow Outflow { get; }

    /// <summary>The graph whose parcels the layers name.</summary>
    public ParcelGraph Parcels { get; }

    /// <summary>What flows under way have brought to units and sinks so far, not yet a load of its own.</summary>
    public IReadOnlyList<(PlaceId Place, IReadOnlyList<Layer> Layers)> Arriving { get; }

    /// <summary>Places in which anything lies.</summary>
    public IEnumerable<PlaceId> Places => contents.Keys.Select(k => new PlaceId(k));

    /// <summary>What lies in a place, bottom first; a stirred place lists the parts of its mixture. Empty where nothing lies.</summary>
    public IReadOnlyList<Layer> ContentOf(PlaceId place)
    {
        var layers = new List<Layer>();
        if (contents.TryGetValue(place.Value, out var content))
        {
            content.List(layers);
        }

        return layers;
    }

    /// <summary>What would leave a place next if so much were drawn and nothing filled in, in the order in which it would leave.</summary>
    /// <param name="place">The place.</param>
    /// <param name="mass">How much to draw; what lies there at most is given.</param>
    public IReadOnlyList<Layer> NextOut(PlaceId place, Mass mass)
    {
        if (!contents.TryGetValue(place.Value, out var content))
        {
            return [];
        }

        var posed = new PosedParcels();
        var taken = new List<Layer>();
        content.Copy(posed).Draw(mass.Grams, taken);
        return posed.Apart(taken);
    }
}
