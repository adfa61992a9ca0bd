using Evengrist.Bins;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tempering;

/// <summary>Wheat and water of what lies in a temper bin, or of part of it, from the ledger.</summary>
/// <param name="WheatTonnes">All but water, t; reckoned.</param>
/// <param name="WaterTonnes">Water the ledger has moved into it from a place of water, t; reckoned.</param>
/// <param name="MoisturePercent">Moisture before water: mean of the loads read, by mass, per cent wet basis; null where none was read.</param>
/// <param name="MoistureUncertainty">One standard uncertainty of it, points: the mean of the loads' own, their errors taken as shared [ours], and how far the ways of emptying differ; null where no reading carries one and they do not.</param>
/// <param name="ShareRead">Share of the wheat from loads with a reading, 0 to 1.</param>
/// <param name="Classes">Wheat classes with their share of the wheat, most first; without what has no class.</param>
public sealed record TemperContent(
    double WheatTonnes, double WaterTonnes, double? MoisturePercent, double? MoistureUncertainty, double ShareRead, IReadOnlyList<(string Class, double Share)> Classes)
{
    /// <summary>Looks at layers of a temper bin.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="makeup">What layers are made up of.</param>
    /// <param name="layers">Layers of one snapshot, or what would leave next.</param>
    /// <param name="at">The moment up to which readings count.</param>
    public static TemperContent Of(Book book, MakeupModel makeup, IReadOnlyList<Layer> layers, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(makeup);
        ArgumentNullException.ThrowIfNull(layers);
        var made = makeup.Of(layers);
        var water = made.Origins.Where(o => book[o.Place].Kind == PlaceKind.Water).Sum(o => o.Grams);
        var wheat = made.Grams - water;
        var read = made.Loads.Select(l => (l.Grams, Reading: book.ReadingsOn(l.Place).LastOrDefault(r => r.What == Property.Moisture && r.At <= at))).Where(l => l.Reading is not null).ToArray();
        var grams = read.Sum(r => r.Grams);
        var sure = read.Where(r => r.Reading!.StandardUncertainty is not null).ToArray();
        var classes = made.Loads.Concat(made.Origins.Where(o => book[o.Place].Kind == PlaceKind.Opening)).Where(p => book[p.Place].Material.Length > 0)
            .GroupBy(p => book[p.Place].Material).Select(g => (g.Key, g.Sum(p => p.Grams) / wheat)).OrderByDescending(c => c.Item2).ThenBy(c => c.Key, StringComparer.Ordinal);
        return new TemperContent(
            wheat / 1e6, water / 1e6, grams > 0 ? read.Sum(r => r.Grams * (double)r.Reading!.Value) / grams : null,
            sure.Length > 0 ? sure.Sum(r => r.Grams * (double)r.Reading!.StandardUncertainty!.Value) / sure.Sum(r => r.Grams) : null,
            wheat > 0 ? Math.Min(1, grams / wheat) : 0, wheat > 0 ? [.. classes] : []);
    }

    /// <summary>The same grain as several ways in which the wheat bins may have emptied have it: the mean of their moistures, surer the less they differ.</summary>
    /// <remarks>u² = the mean u² + (greatest − least)²/12, a uniform spread over the ways [ours]: which layers came out is not seen. Mass, water and classes are those of the first way.</remarks>
    /// <param name="ways">One for each way; at least one.</param>
    public static TemperContent Over(IReadOnlyList<TemperContent> ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        double[] moistures = [.. ways.Select(w => w.MoisturePercent).OfType<double>()];
        if (moistures.Length < ways.Count || ways.Count < 2)
        {
            return ways[0];
        }

        var (own, apart) = (ways.Select(w => w.MoistureUncertainty).OfType<double>().ToArray(), moistures.Max() - moistures.Min());
        var usual = own.Length > 0 ? own.Average(u => u * u) : TemperWaterSpec.UsualMoistureUncertainty * TemperWaterSpec.UsualMoistureUncertainty;
        return ways[0] with { MoisturePercent = moistures.Average(), MoistureUncertainty = Math.Sqrt(usual + (apart * apart / 12)) };
    }

    /// <summary>Moisture to expect of it at first break with the water seen; null where no moisture was read or no wheat lies there.</summary>
    /// <param name="evaporationPercent">Water lost to first break, per cent of the tempered mass; 0 to 5.</param>
    public MoistureForecast? AtFirstBreak(double evaporationPercent) => MoisturePercent is { } moisture && WheatTonnes > 0
        ? MoistureForecast.Of(WheatTonnes, moisture, MoistureUncertainty ?? TemperWaterSpec.UsualMoistureUncertainty, WaterTonnes, TemperWaterSpec.UsualWaterUncertaintyPercent, evaporationPercent)
        : null;

    /// <summary>The water it would take to an aim by balance; null where no moisture was read or no wheat lies there.</summary>
    /// <param name="aimPercent">The aim at first break, per cent wet basis.</param>
    /// <param name="evaporationPercent">Water lost to first break, per cent of the tempered mass; 0 to 5.</param>
    public TemperWaterOutcome? Asked(double aimPercent, double evaporationPercent) => MoisturePercent is { } moisture && WheatTonnes > 0
        ? TemperWaterModel.Of(new TemperWaterSpec(moisture, aimPercent) { Tonnes = WheatTonnes, EvaporationPercent = evaporationPercent })
        : null;
}
