using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The watch over the wheat bins: cables every Monday, insects once a month, CO₂ over the moist wheat, fans in autumn. The temperatures follow a season with a lag; all invented.</summary>
internal sealed class StoreWatch(ulong seed, BinPlan plan)
{
    private const double FullMetres = 20, Cover = 0.3, Harvest = 27;
    private static readonly LocalDate Warming = new(2025, 12, 8), Turned = new(2026, 1, 16);
    private static readonly (decimal At, string Cable)[] Flat = [(1.5m, "C1"), (7.5m, "C1"), (4.0m, "C2"), (11.0m, "C2")], Hopper = [(3.0m, "C1"), (9.0m, "C1"), (14.0m, "C1")], Steep = [(6.0m, "C1")];
    private readonly Dice dice = new(seed, "store watch");
    private readonly Dictionary<string, (double Tonnes, double Celsius)> grain = [];

    /// <summary>What is read and done on a day, before the bins are drawn.</summary>
    public void Day(Desk desk, LocalDate day)
    {
        if (day.DayOfWeek == IsoDayOfWeek.Monday)
        {
            foreach (var bin in plan.Bins)
            {
                Follow(bin, day);
                Round(desk, bin, day);
            }
        }

        if (day.Day == 15)
        {
            foreach (var bin in plan.Bins.Where(b => b.CapacityTonnes >= 5_000 && b.Tonnes > 200))
            {
                var found = bin.Code == "B09" && day.Month == 9 ? 1 : 0;
                desk.Read(bin.Code, MillCalendar.At(day, 9), Property.LiveWeevils, 0, "/sample", default, "sieved 1 kg from the hatch");
                desk.Read(bin.Code, MillCalendar.At(day, 9), Property.OtherLiveInsects, found, "/sample", default, "sieved 1 kg from the hatch");
            }
        }

        if (day is { Month: 10, Day: 20 } or { Month: 11, Day: 24 })
        {
            foreach (var bin in plan.Bins.Where(b => b.CapacityTonnes >= 5_000 && b.Tonnes > 500))
            {
                desk.Happened(bin.Code, MillCalendar.At(day, 6, 5), HappeningKind.Aerated, new AerationRun(110, 0.104).Text("by night, air from outside"));
            }
        }

        if (day == Turned)
        {
            desk.Happened("B07", MillCalendar.At(day, 6, 5), HappeningKind.Aerated, new AerationRun(40, 0.104).Text("warm spot at C2, 4 m; Osric Venn decided after the list of 14 January"));
        }
    }

    // A year's mean of 10 °C and 13 °C to either side of it, warmest in late July.
    private static double Outside(LocalDate day) => 10 + (13 * Wave((day.DayOfYear - 205) / 365.0));

    // cos 2πx to within 0.001, without a call whose last bits may differ between machines.
    private static double Wave(double x)
    {
        var turn = Math.Abs(x - Math.Round(x));
        var (sign, at) = turn > 0.25 ? (-1.0, 0.5 - turn) : (1.0, turn);
        var y = 2 * Math.PI * at;
        return sign * (1 - (y * y / 2) + (y * y * y * y / 24) - (y * y * y * y * y * y / 720));
    }

    // What came in since the last round brings its own warmth; the rest goes towards the season, faster while the fans run in autumn.
    private void Follow(WheatBin bin, LocalDate day)
    {
        var outside = Math.Max(3, Outside(day) - 2); // the fans run by night, and not in hard frost
        var (before, celsius) = grain.GetValueOrDefault(bin.Code, (0, 18));
        var fresh = Math.Max(0, bin.Tonnes - before);
        var warm = day < new LocalDate(2025, 9, 8) ? Harvest : Math.Max(8, outside + 3);
        celsius = bin.Tonnes <= 0 ? 18 : ((celsius * (bin.Tonnes - fresh)) + (warm * fresh)) / bin.Tonnes;
        celsius += (bin.Code is "B07" or "B18" ? 0.08 : day.Month is >= 7 and <= 12 ? 0.25 : 0.035) * (outside - celsius);
        grain[bin.Code] = (bin.Tonnes, celsius);
    }

    private void Round(Desk desk, WheatBin bin, LocalDate day)
    {
        var at = MillCalendar.At(day, 6, 20);
        var height = FullMetres * bin.Tonnes / bin.CapacityTonnes;
        foreach (var (metres, cable) in bin.CapacityTonnes switch { 10_000 => Flat, 5_000 => Hopper, _ => Steep })
        {
            if ((double)metres + Cover > height)
            {
                continue;
            }

            var bulk = grain[bin.Code].Celsius;
            var celsius = bulk + (0.12 * (Outside(day) - bulk) * (double)metres / FullMetres) + Spot(bin, metres, day) + dice.Normal(0, 0.2);
            desk.Read(bin.Code, at, Property.Temperature, LabBench.Round(celsius, 1), "°C", default, "cable", new CablePoint(cable, metres).ToString(), 0.3m);
        }

        if (bin.Code is "B07" or "B08" && bin.Tonnes > 300)
        {
            desk.Read(bin.Code, at, Property.CarbonDioxide, LabBench.Round(520 + (95 * Spot(bin, 4.0m, day)) + dice.Normal(0, 25), 0), "ppm", default, "head of the bin, infrared", "CO2-1");
        }
    }

    // Moist Lowmere wheat in B07 warms from December on, until air is blown through it in the middle of January.
    private static double Spot(WheatBin bin, decimal metres, LocalDate day)
    {
        if (bin.Code != "B07" || day < Warming)
        {
            return 0;
        }

        var weeks = Period.DaysBetween(Warming, day < Turned ? day : Turned) / 7.0;
        var since = day < Turned ? 0 : Period.DaysBetween(Turned, day) / 7.0;
        return (metres == 4.0m ? 1 : 0.15) * 0.38 * weeks * weeks / (1 + (since * since));
    }
}
