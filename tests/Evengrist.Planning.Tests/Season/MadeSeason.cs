using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using NodaTime;

namespace Evengrist.Planning.Tests.Season;

/// <summary>An invented crop year: a dozen and a half bins, eight flours with protein, ash and falling number windows, deliveries in the first weeks, dear and limited purchases.</summary>
internal static class MadeSeason
{
    public static readonly int[] Seeds = [20261125, 1, 2, 3, 4];

    public static SeasonSpec Of(int seed, int weeks = 52, int bins = 17, int flours = 8, int? gates = 4, double share = 0.05)
    {
        var dice = new Random(seed);
        double Between(double least, double most) => least + ((most - least) * dice.NextDouble());
        var start = new LocalDate(2025, 7, 7);
        SeasonPeriod[] periods = [.. Enumerable.Range(0, weeks).Select(w => new SeasonPeriod(start.PlusWeeks(w), 7))];
        var (flourList, need) = (new List<SeasonFlour>(), 0.0);
        for (var f = 0; f < flours; f++)
        {
            var (aim, yield, weekly) = (Between(10.6, 13.4), Between(0.74, 0.79), Between(250, 550));
            var (ash, falling) = (Between(1.54, 1.61), Between(290, 350));
            need += weekly / yield;
            flourList.Add(new SeasonFlour($"F{f + 1}", f % 2 == 0 ? "A" : "B", [.. periods.Select(_ => weekly * Between(0.85, 1.15))], yield, 900)
            {
                LeastShare = share,
                MostGates = gates,
                ByProductPerTonne = 0,
                Limits =
                [
                    Share(Property.Protein, aim - 0.1, aim + 0.1),
                    Share(Property.Ash, ash - 0.025, ash + 0.025),
                    new(Property.FallingNumber, falling - 20, falling + 20, 8),
                ],
            });
        }

        SeasonWheat[] wheats = [.. Enumerable.Range(0, bins).Select(b => Bin(b, need * weeks / bins, dice))];
        SeasonOffer[] offers = [.. Enumerable.Range(0, 2).Select(o => new SeasonOffer(
            new($"P{o + 1}", "HW", 0, 12, Quality(o == 0 ? 14.5 : 12.2, 1.55, 380)), [new(need * 0.1, 255 + (o == 0 ? 30 : 0)), new(need * 0.1, 275 + (o == 0 ? 40 : 0))], 4, weeks - 1))];
        var rate = need * 1.25 / 2 / 150;
        MillUnit[] units = [new("A", rate, [.. periods.Select(_ => 150.0)]), new("B", rate, [.. periods.Select(_ => 150.0)])];
        return new SeasonSpec(periods, units, wheats, flourList, "USD")
        {
            Homes = [.. wheats.Select(w => new SeasonHome(w.Home, need * weeks * 1.5 / bins))],
            Offers = offers,
            StoragePerTonneWeek = 0.35,
        };
    }

    private static SeasonWheat Bin(int b, double mean, Random dice)
    {
        double Between(double least, double most) => least + ((most - least) * dice.NextDouble());
        var (opening, comes) = (mean * Between(0.4, 0.9), mean * Between(0.1, 0.6));
        return new SeasonWheat($"B{b + 1:00}", "HW", opening, Between(11, 13), Quality(Between(9.6, 15.2), Between(1.45, 1.7), Between(230, 420)))
        {
            Home = $"B{b + 1:00}",
            Deliveries = [.. Enumerable.Range(0, 4).Select(w => new SeasonDelivery(w, comes / 4, comes / 16))],
        };
    }

    public static SeasonQuality Quality(double protein, double ash, double fallingNumber) => new(new Dictionary<Property, SeasonValue>
    {
        [Property.Protein] = new(protein, 0.2, Basis.At12),
        [Property.Ash] = new(ash, 0.02, Basis.At14),
        [Property.FallingNumber] = new(fallingNumber, 15),
    });

    private static SeasonLimit Share(Property what, double? least, double? most) => new(what, least, most, 400) { Basis = what == Property.Ash ? Basis.At14 : Basis.At12 };
}
