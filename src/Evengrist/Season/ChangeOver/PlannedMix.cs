using Evengrist.Ledger;

namespace Evengrist.Season.ChangeOver;

/// <summary>The wheat mix of a crop as a plan has it: what a change of crop is laid out from where nothing better is known.</summary>
public static class PlannedMix
{
    /// <summary>The mean mix that a plan draws for a flour from some of its wheats in some of its periods; null where it draws none.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="flour">Code of the flour.</param>
    /// <param name="isOf">Whether a wheat is of the crop.</param>
    /// <param name="first">Number of the first period looked at.</param>
    public static CropMix? Of(SeasonPlan plan, string flour, Func<SeasonWheat, bool> isOf, int first = 0)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(isOf);
        var wheats = plan.Spec.AllWheats.Where(isOf).ToDictionary(w => w.Code);
        var drawn = plan.Qualities.ToDictionary(q => (q.Wheat, q.Period), q => (q.MoisturePercent, q.Quality));
        return Mean([.. plan.Uses.Where(u => u.Flour == flour && u.Period >= first && wheats.ContainsKey(u.Wheat))
            .Select(u => (u.Wheat, u.Tonnes, Is: drawn.TryGetValue((u.Wheat, u.Period), out var is_) ? is_ : (wheats[u.Wheat].MoisturePercent, wheats[u.Wheat].Quality)))]);
    }

    /// <summary>The mean of some wheats by what lies there and is expected; null where nothing is.</summary>
    public static CropMix? Of(IEnumerable<SeasonWheat> wheats)
    {
        ArgumentNullException.ThrowIfNull(wheats);
        return Mean([.. wheats.Select(w => (w.Code, w.OpeningTonnes + w.Deliveries.Sum(d => d.Tonnes), (w.MoisturePercent, w.Quality)))]);
    }

    // Wheats are off by their own errors, independent of each other; a wheat is off the same way whenever it is drawn.
    private static CropMix? Mean((string Wheat, double Tonnes, (double Moisture, SeasonQuality Quality) Is)[] parts)
    {
        var all = parts.Sum(p => p.Tonnes);
        if (all <= 0)
        {
            return null;
        }

        var values = new Dictionary<Property, SeasonValue>();
        foreach (var what in parts.SelectMany(p => p.Is.Quality.Values.Keys).Distinct().Where(w => SeasonScale.Averages(w) && parts.All(p => p.Is.Quality.TryGet(w, out _))))
        {
            double Weight((string Wheat, double Tonnes, (double Moisture, SeasonQuality Quality) Is) part) => part.Tonnes * SeasonScale.Weight(what, part.Is.Moisture);
            var (weights, basis) = (parts.Sum(Weight), parts[0].Is.Quality.Values[what].Basis);
            var spread = parts.GroupBy(p => p.Wheat).Sum(g => Math.Pow(g.Sum(p => Weight(p) * p.Is.Quality.Values[what].Spread) / weights, 2));
            values[what] = new SeasonValue(SeasonScale.FromScale(what, parts.Sum(p => Weight(p) * SeasonScale.OnScale(what, p.Is.Quality.Values[what])) / weights, basis), Math.Sqrt(spread), basis);
        }

        return new CropMix(parts.Sum(p => p.Tonnes * p.Is.Moisture) / all, new SeasonQuality(values));
    }
}
