using Evengrist.Ledger;

namespace Evengrist.Bins;

/// <summary>Reckons what layers are made up of, by walking their parcels back.</summary>
/// <remarks>One model is for one thread and one reckoning; it is as new as the reckoning was when last caught up.</remarks>
/// <param name="book">The book the reckoning follows.</param>
/// <param name="parcels">The graph the layers' numbers belong to.</param>
public sealed class MakeupModel(Book book, ParcelGraph parcels)
{
    private readonly Sweep sweep = new(parcels.Rows);

    /// <summary>What some layers together are made up of.</summary>
    /// <param name="layers">Layers of one snapshot, or what would leave next.</param>
    public Makeup Of(params IReadOnlyList<Layer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        var reached = sweep.Back(layers.Select(l => l.Parcel).ToArray(), layers.Select(l => l.Grams).ToArray());
        var loads = new Dictionary<PlaceId, double>();
        foreach (var parcel in reached)
        {
            Add(loads, parcel, book[parcels.PlaceOf(parcel)].Kind == PlaceKind.Truck);
        }

        var origins = new Dictionary<PlaceId, double>();
        foreach (var parcel in sweep.Origins)
        {
            Add(origins, parcel, true);
        }

        return new Makeup(Sorted(origins), Sorted(loads));
    }

    private void Add(Dictionary<PlaceId, double> parts, int parcel, bool counts)
    {
        if (counts)
        {
            var place = parcels.PlaceOf(parcel);
            parts[place] = parts.GetValueOrDefault(place) + sweep.ShareOf(parcel);
        }
    }

    private static PlacePart[] Sorted(Dictionary<PlaceId, double> parts) =>
        [.. parts.Select(p => new PlacePart(p.Key, p.Value)).OrderByDescending(p => p.Grams).ThenBy(p => p.Place)];
}
