using Evengrist.Ledger;
using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Bands;
using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>
/// By what wheat is worth to the year. Bands are designed before the harvest at the year's worths and each has one bin open. A truck goes to its band; or, to try what that would do, where the duals
/// of the year planned that morning, with the open bins as the rest of the harvest is expected to fill them, make it worth most by itself, whatever its band.
/// </summary>
internal sealed class YearValueBin : IBinRule
{
    private const int Bands = 8;
    private readonly SimulatedYear year;
    private readonly double tie;
    private readonly Forecast forecast;
    private readonly IReadOnlyList<HarvestBand> bands;
    private readonly OpenBins open;
    private SeasonWorth? worth;
    private string[] morning = [];

    /// <summary>Designs the bands.</summary>
    /// <param name="year">The year.</param>
    /// <param name="tie">What counts as equal worth and leaves the truck to its band, standard uncertainties of its reading; +∞ for bands alone.</param>
    public YearValueBin(SimulatedYear year, double tie)
    {
        (this.year, this.tie, forecast) = (year, tie, new Forecast(year));
        bands = Designed();
        open = new OpenBins(bands.Count);
    }

    private IReadOnlyList<HarvestBand> Designed()
    {
        var price = SimulatedYear.Price(SimulatedYear.Wheat("", 0, year.Districts.Sum(d => d.Tonnes * d.Protein) / year.Districts.Sum(d => d.Tonnes), 340));
        return BandRun.Reckon(forecast.Harvest(Bands), YearSpec.Of(year, 0, SimulatedYear.Weeks, []), price) is BandsPlanned { Rows: [.., var row] } ? row.Design.Bands : throw new InvalidOperationException("There are no bands.");
    }

    public void Begin(int day, Store store)
    {
        if (double.IsPositiveInfinity(tie))
        {
            return;
        }

        var comes = forecast.InBands(day, bands);
        var wheats = store.Bins.ToArray();
        for (var n = 0; n < bands.Count; n++)
        {
            var bin = wheats[open[n]];
            wheats[open[n]] = TruckMix.Of(TruckMix.Lies(bin) > 0 ? bin : bin with { Quality = comes[n].Quality }, comes[n]) with
            {
                OpeningTonnes = bin.OpeningTonnes, Deliveries = [.. bin.Deliveries, .. Forecast.ByWeek(day, comes[n].OpeningTonnes)],
            };
        }

        // The open bin stands for all that its band still brings: when it is full, the band's next bin takes its place, at the same worth until the next morning.
        morning = [.. Enumerable.Range(0, open.Count).Select(n => store.Bins[open[n]].Code)];
        SeasonWheat[] filled = [.. wheats.Where(w => TruckMix.Lies(w) > 0).Select(Priced)];
        worth = new SeasonWorth(Plan(day / SimulatedYear.Days, filled, [.. filled.Select(w => new SeasonHome(w.Home, 2 * year.Need))]));
    }

    public int Of(Truck truck, Store store)
    {
        open.Refresh(store);
        var own = Enumerable.Range(0, open.Count).First(n => truck.Reads.Quality.Values[Property.Protein].Value < bands[n].To);

        if (worth is null)
        {
            return open[own];
        }

        // What lies within the reading's own uncertainty counts as equal, and then the band decides.
        var (values, off) = (Values(truck.Reads), Values(Off(truck.Reads)));
        var best = Enumerable.Range(0, open.Count).MaxBy(n => values[n]);
        return open[values[best] - values[own] <= tie * Math.Abs(values[best] - off[best]) ? own : best];
    }

    private double[] Values(SeasonWheat truck)
    {
        var worths = worth!.OfTruck(truck).Where(w => w.WhyNot.Length == 0).ToDictionary(w => w.Wheat, w => w.Money);
        return [.. morning.Select(m => worths.GetValueOrDefault(m, double.NegativeInfinity))];
    }

    private static SeasonWheat Off(SeasonWheat truck) => truck.Quality.Values[Property.Protein] is var protein ? truck with { Quality = truck.Quality.With(Property.Protein, protein with { Value = protein.Value + SimulatedYear.ReadingSpread }) } : truck;

    private SeasonPlan Plan(int week, IReadOnlyList<SeasonWheat> wheats, IReadOnlyList<SeasonHome> homes) =>
        YearSpec.Solved(SeasonPlanner.Linear(YearSpec.Of(year, week, SimulatedYear.Weeks - week, wheats) with { Homes = homes }));

    private static SeasonWheat Priced(SeasonWheat wheat) => wheat with { EndValuePerTonne = SimulatedYear.Price(wheat) };
}
