using Evengrist.Ledger;

namespace Evengrist.Season.Bands;

/// <summary>Two bands in one bin.</summary>
public static class BandMerge
{
    /// <summary>What lies in the bin then: tonnes add, each property averages on its scale.</summary>
    public static HarvestBand Of(HarvestBand a, HarvestBand b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var values = new Dictionary<Property, SeasonValue>();
        foreach (var (what, value) in a.Quality.Values)
        {
            var other = b.Quality.Values[what];
            var (x, y) = (a.Tonnes * SeasonScale.Weight(what, a.MoisturePercent), b.Tonnes * SeasonScale.Weight(what, b.MoisturePercent));
            values[what] = value with { Value = SeasonScale.FromScale(what, ((x * SeasonScale.OnScale(what, value)) + (y * SeasonScale.OnScale(what, other))) / (x + y), value.Basis) };
        }

        var tonnes = a.Tonnes + b.Tonnes;
        return new HarvestBand(
            Math.Min(a.From, b.From), Math.Max(a.To, b.To), Math.Min(a.FallingNumberFrom, b.FallingNumberFrom), Math.Max(a.FallingNumberTo, b.FallingNumberTo), tonnes,
            ((a.Tonnes * a.MoisturePercent) + (b.Tonnes * b.MoisturePercent)) / tonnes, new SeasonQuality(values), ((a.Tonnes * a.Strays) + (b.Tonnes * b.Strays)) / tonnes);
    }
}
