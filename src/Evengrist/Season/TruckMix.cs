using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>A bin with a truck laid into it, mixed through.</summary>
public static class TruckMix
{
    /// <summary>t that the truck mixes with: what lies there and what is to come of the same quality.</summary>
    public static double Lies(SeasonWheat bin)
    {
        ArgumentNullException.ThrowIfNull(bin);
        return bin.OpeningTonnes + bin.Deliveries.Where(d => d.Quality is null).Sum(d => d.Tonnes);
    }

    /// <summary>The bin's wheat with the truck in it: more tonnes, and each property its weighted mean on the scale on which it averages. Layers of the bin stay, and the truck is the last one.</summary>
    /// <param name="bin">The wheat in the bin.</param>
    /// <param name="truck">The truck; its tonnes are the opening.</param>
    public static SeasonWheat Of(SeasonWheat bin, SeasonWheat truck)
    {
        ArgumentNullException.ThrowIfNull(bin);
        ArgumentNullException.ThrowIfNull(truck);
        var lies = Lies(bin);
        var all = lies + truck.OpeningTonnes;
        if (all <= 0)
        {
            return bin;
        }

        var values = new Dictionary<Property, SeasonValue>();
        foreach (var (what, own) in bin.Quality.Values)
        {
            if (truck.Quality.TryGet(what, out var comes) && SeasonScale.Averages(what))
            {
                var (a, b) = (lies * SeasonScale.Weight(what, bin.MoisturePercent), truck.OpeningTonnes * SeasonScale.Weight(what, truck.MoisturePercent));
                values[what] = own with { Value = SeasonScale.FromScale(what, ((a * SeasonScale.OnScale(what, own)) + (b * SeasonScale.OnScale(what, comes))) / (a + b), own.Basis) };
            }
        }

        return bin with
        {
            OpeningTonnes = bin.OpeningTonnes + truck.OpeningTonnes,
            MoisturePercent = ((lies * bin.MoisturePercent) + (truck.OpeningTonnes * truck.MoisturePercent)) / all,
            Quality = new SeasonQuality(values),
            ExtractionPoints = ((lies * bin.ExtractionPoints) + (truck.OpeningTonnes * truck.ExtractionPoints)) / all,
            Layers = bin.Layers.Count > 0 ? [.. bin.Layers, new SeasonLayer(truck.OpeningTonnes, truck.MoisturePercent, truck.Quality)] : [],
        };
    }
}
