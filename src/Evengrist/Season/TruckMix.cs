using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>A bin with a truck laid into it, mixed through.</summary>
public static class TruckMix
{
    /// <summary>The bin's wheat with the truck in it: more tonnes, and each property its weighted mean on the scale on which it averages. Layers of the bin stay, and the truck is the last one.</summary>
    /// <param name="bin">The wheat in the bin.</param>
    /// <param name="truck">The truck; its tonnes are the opening.</param>
    public static SeasonWheat Of(SeasonWheat bin, SeasonWheat truck)
    {
        ArgumentNullException.ThrowIfNull(bin);
        ArgumentNullException.ThrowIfNull(truck);
        var all = bin.OpeningTonnes + truck.OpeningTonnes;
        if (all <= 0)
        {
            return bin;
        }

        var values = new Dictionary<Property, SeasonValue>();
        foreach (var (what, own) in bin.Quality.Values)
        {
            if (truck.Quality.TryGet(what, out var comes) && SeasonScale.Averages(what))
            {
                var (a, b) = (bin.OpeningTonnes * SeasonScale.Weight(what, bin.MoisturePercent), truck.OpeningTonnes * SeasonScale.Weight(what, truck.MoisturePercent));
                values[what] = own with { Value = SeasonScale.FromScale(what, ((a * SeasonScale.OnScale(what, own)) + (b * SeasonScale.OnScale(what, comes))) / (a + b), own.Basis) };
            }
        }

        return bin with
        {
            OpeningTonnes = all,
            MoisturePercent = ((bin.OpeningTonnes * bin.MoisturePercent) + (truck.OpeningTonnes * truck.MoisturePercent)) / all,
            Quality = new SeasonQuality(values),
            ExtractionPoints = ((bin.OpeningTonnes * bin.ExtractionPoints) + (truck.OpeningTonnes * truck.ExtractionPoints)) / all,
            Layers = bin.Layers.Count > 0 ? [.. bin.Layers, new SeasonLayer(truck.OpeningTonnes, truck.MoisturePercent, truck.Quality)] : [],
        };
    }
}
