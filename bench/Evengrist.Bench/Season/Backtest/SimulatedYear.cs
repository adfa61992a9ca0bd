using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>A crop year as it comes, truck by truck and week by week, and what was expected of it. Invented; drawn from a seed.</summary>
internal sealed class SimulatedYear
{
    public const int Weeks = 52, HarvestWeeks = 6, Days = 6;
    public const double TruckTonnes = 26, Storage = 0.35, UnmetPrice = 900, MissPrice = 400, ReadingSpread = 0.2, TruckProtein = 0.7;
    private const double Moisture = 12, TruckFalling = 30;
    private readonly Random dice;

    public SimulatedYear(int seed)
    {
        dice = new Random(seed);
        Start = new LocalDate(2025, 7, 7);
        double[] aims = [11.4, 12.0, 12.6, 13.1, 13.7];
        Flours = [.. aims.Select((aim, i) => Flour($"F{i + 1}", aim + Between(-0.2, 0.2)))];
        Need = Flours.Sum(f => f.Demand.Sum() / f.Yield);
        (string, double Protein)[] places = [("Northledge", 11.2), ("Scarrow Rim", 12.0), ("Lowmere", 12.6), ("Talvin Bank", 13.3), ("High Brack", 14.2)];
        Districts = [.. places.Select(p => new District(p.Item1, Need * 0.18 * Between(0.8, 1.2), p.Protein + Between(-0.2, 0.2), Between(310, 370)))];
        Ordered = [.. Flours.Select(Orders)];
        Trucks = [.. Districts.SelectMany(Comes).OrderBy(t => t.Day).ThenBy(_ => dice.Next())];
    }

    public LocalDate Start { get; }

    public IReadOnlyList<SeasonFlour> Flours { get; }

    /// <summary>What each flour's customers take in the end, t a week; the flours' own demand is what was expected.</summary>
    public IReadOnlyList<double[]> Ordered { get; }

    public IReadOnlyList<District> Districts { get; }

    /// <summary>In the order in which they come.</summary>
    public IReadOnlyList<Truck> Trucks { get; }

    /// <summary>Wheat that the expected demand takes, t.</summary>
    public double Need { get; }

    /// <summary>Two wheats can be bought from the ninth week on, dearer than what the harvest is paid.</summary>
    public IReadOnlyList<SeasonOffer> Offers =>
    [
        new(Wheat("P1", 0, 14.4, 380), [new(Need * 0.004, 285), new(Need * 0.004, 310)], 8, Weeks - 1),
        new(Wheat("P2", 0, 12.3, 350), [new(Need * 0.006, 235), new(Need * 0.006, 255)], 8, Weeks - 1),
    ];

    /// <summary>What the harvest is paid and what wheat left at the end is worth, money per t: a line of protein.</summary>
    public static double Price(SeasonWheat wheat) => 190 + (14 * (Math.Clamp(wheat.Quality.Values[Property.Protein].Value, 10, 15) - 11.5));

    public static SeasonWheat Wheat(string code, double tonnes, double protein, double falling) => new(code, "HW", tonnes, Moisture, new SeasonQuality(new Dictionary<Property, SeasonValue>
    {
        [Property.Protein] = new(protein, TruckProtein, Basis.At12), [Property.FallingNumber] = new(Math.Max(80, falling), TruckFalling),
    }));

    private SeasonFlour Flour(string code, double aim)
    {
        var weekly = Between(200, 320);
        return new SeasonFlour(code, "A", [.. Enumerable.Repeat(weekly, Weeks)], Between(0.74, 0.78), UnmetPrice)
        {
            Limits = [new(Property.Protein, aim - 0.1, aim + 0.25, MissPrice) { Basis = Basis.At12 }, new(Property.FallingNumber, Between(280, 320), null, 8)],
        };
    }

    // A week of many orders is followed by another; the year as a whole lies off the forecast as well.
    private double[] Orders(SeasonFlour flour)
    {
        var (year, last) = (Normal() * 0.03, 0.0);
        return [.. flour.Demand.Select(d => d * Math.Max(0.5, 1 + year + (last = (0.5 * last) + (0.05 * Normal()))))];
    }

    // A district's year lies off the forecast in tonnes, protein and falling number; its trucks lie about that; the scale house reads each with an error.
    private IEnumerable<Truck> Comes(District of)
    {
        var (tonnes, protein, falling) = (of.Tonnes * Math.Max(0.4, 1 + (0.12 * Normal())), of.Protein + (0.4 * Normal()), of.FallingNumber + (25 * Normal()));
        for (var n = (int)(tonnes / TruckTonnes); n > 0; n--)
        {
            var (p, f) = (Math.Clamp(protein + (TruckProtein * Normal()), 8.5, 17), falling + (TruckFalling * Normal()));
            yield return new Truck(dice.Next(HarvestWeeks * Days), of.Name, Wheat("truck", TruckTonnes, p, f), Wheat("truck", TruckTonnes, p + (ReadingSpread * Normal()), f + (12 * Normal())));
        }
    }

    private double Between(double least, double most) => least + ((most - least) * dice.NextDouble());

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - dice.NextDouble())) * Math.Cos(2 * Math.PI * dice.NextDouble());
}

/// <summary>What is expected of a district.</summary>
internal sealed record District(string Name, double Tonnes, double Protein, double FallingNumber);

/// <summary>A truck: what it is, and what the scale house reads.</summary>
/// <param name="Day">Day of the harvest, from 0, six to a week.</param>
internal sealed record Truck(int Day, string District, SeasonWheat Is, SeasonWheat Reads);
