using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Bands;
using MathNet.Numerics.Distributions;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>What is still to come, as it looks on a day of the harvest: the forecast, drawn towards what has come so far.</summary>
internal sealed class Forecast(SimulatedYear year)
{
    private const int Parts = 40;

    /// <summary>What each district is expected to bring from a day on, t, protein and falling number.</summary>
    public IReadOnlyList<District> After(int day) => [.. year.Districts.Select(d =>
    {
        var came = year.Trucks.TakeWhile(t => t.Day < day).Where(t => t.District == d.Name).ToArray();
        var (gone, all) = (Math.Min(1, day / (double)(SimulatedYear.HarvestWeeks * SimulatedYear.Days)), came.Length + 30.0);
        var rate = gone > 0 ? came.Length * SimulatedYear.TruckTonnes / (d.Tonnes * gone) : 1;
        double Drawn(Property what, double expected) => came.Length == 0 ? expected : ((came.Length * came.Average(t => t.Reads.Quality.Values[what].Value)) + (30 * expected)) / all;
        return new District(d.Name, d.Tonnes * (1 - gone) * (1 + (came.Length / all * (rate - 1))), Drawn(Property.Protein, d.Protein), Drawn(Property.FallingNumber, d.FallingNumber));
    })];

    /// <summary>The whole of it as a harvest to be parted into bands.</summary>
    public BandSpec Harvest(int bands) => new("HW", [.. year.Districts.Select(d => new HarvestPart(d.Name, d.Tonnes, 12, SimulatedYear.Wheat("", 0, d.Protein, d.FallingNumber).Quality))], bands) { ReadingSpread = SimulatedYear.ReadingSpread };

    /// <summary>Tonnes and quality still to come into each band: every district in parts of equal chance.</summary>
    public IReadOnlyList<SeasonWheat> InBands(int day, IReadOnlyList<HarvestBand> bands)
    {
        var parts = After(day).SelectMany(d => Enumerable.Range(0, Parts).Select(i => (Tonnes: d.Tonnes / Parts, Protein: d.Protein + (SimulatedYear.TruckProtein * Normal.InvCDF(0, 1, (i + 0.5) / Parts)), Falling: d.FallingNumber))).ToArray();
        return [.. bands.Select((b, n) =>
        {
            var own = parts.Where(p => p.Protein >= b.From && p.Protein < b.To).ToArray();
            var tonnes = own.Sum(p => p.Tonnes);
            return tonnes > 0 ? SimulatedYear.Wheat($"band {n}", tonnes, own.Sum(p => p.Tonnes * p.Protein) / tonnes, own.Sum(p => p.Tonnes * p.Falling) / tonnes)
                : new SeasonWheat($"band {n}", "HW", 0, b.MoisturePercent, b.Quality);
        })];
    }

    /// <summary>What is to come from a day on, spread evenly over the days that are left of the harvest, by week from that day's.</summary>
    public static IEnumerable<SeasonDelivery> ByWeek(int day, double tonnes)
    {
        const int all = SimulatedYear.HarvestWeeks * SimulatedYear.Days;
        return Enumerable.Range(day, Math.Max(0, all - day)).GroupBy(d => (d / SimulatedYear.Days) - (day / SimulatedYear.Days)).Select(g => new SeasonDelivery(g.Key, tonnes * g.Count() / (all - day)));
    }
}
