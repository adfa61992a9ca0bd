using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>What the demonstration mill plans its crop year by; all figures are invented.</summary>
public static class SeasonBooks
{
    private const string Keeper = "Osric Venn";
    private const double ProteinMiss = 60, FallingMiss = 0.6, WeightMiss = 12;
    private const double TruckTonnes = 26;
    private static readonly LocalDate FirstOffer = new(2025, 7, 21);

    /// <summary>The terms.</summary>
    public static SeasonTerms Terms { get; } = new()
    {
        End = MillCalendar.LastDay,
        Currency = "USD",
        StoragePerTonneWeek = 0.35,
        Source = "invented, for the demonstration",
        Units = [Unit("A", 17.5), Unit("B", 7.5)],
        Flours =
        [
            Flour("WB", "White bread", "A", 1136, 0.69, ["HW"], 104) with { Limits = [Protein(13.1, 13.7), Falling(320), Weight(76.5)], MostGates = 4, StockMost = 700 },
            Flour("AP", "All-purpose", "A", 592, 0.72, ["HW"], 108) with { Limits = [Protein(11.7, 12.3), Falling(300), Weight(76.5)], MostGates = 4, StockMost = 500, Peaks = [new(new(2025, 10, 20), new(2025, 12, 6), 640)] },
            Flour("HG", "High gluten", "B", 391, 0.74, ["HS", "HW"], 112) with { Limits = [Protein(14.4, null, new ReliefStep(0.3, 7)), Falling(330), Weight(76.5)], MostGates = 4, StockMost = 300 },
            Flour("PA", "Pastry", "B", 257, 0.73, ["SW"], 104) with { Limits = [Protein(9.2, 10.2), Falling(290)], MostGates = 3, StockMost = 250 },
            Flour("WW", "Whole wheat", "B", 174, 0.98, ["HWW", "HS"], 0) with { Limits = [Protein(12.6, null), Falling(300)], MostGates = 3, StockMost = 200 },
        ],
        Offers =
        [
            Offer("E1 ordinary", "HW", 11.7, 0.3, 382, 79.2, new(600, 226), new(900, 233)),
            Offer("E1 strong", "HW", 13.6, 0.3, 392, 78.6, new(450, 250), new(700, 260)),
            Offer("E2 spring", "HS", 14.8, 0.3, 396, 80.0, new(120, 281), new(160, 297)) with { From = "country elevator E2" },
            Offer("E1 soft", "SW", 9.7, 0.3, 338, 77.4, new(260, 219), new(300, 227)),
            Offer("E1 white", "HWW", 13.0, 0.3, 374, 79.5, new(140, 246), new(180, 254)),
        ],
        Arrivals =
        [
            Harvest(District.Northledge, 3, 20, 36_500), Harvest(District.NorthledgeWhite, 3, 20, 4_960), Harvest(District.ScarrowRim, 12, 26, 9_500),
            Harvest(District.TalvinBank, 10, 39, 17_000), Harvest(District.Lowmere, 24, 43, 13_500), Harvest(District.HighBrack, 49, 61, 15_000),
        ],
        CarryOut = [new("", 12_000), new("HS", 1_000)],
        EndWorths = [new("HW", 222), new("HS", 258), new("SW", 212), new("HWW", 236)],
        Usual = [Usual("HW", 385, 78.8), Usual("HS", 396, 80.0), Usual("SW", 338, 77.4), Usual("HWW", 374, 79.5)],
        Instruments = [new(Property.Protein, 0.05, 0.05) { Drift = 0.004 }, new(Property.FallingNumber, 4, 8), new(Property.TestWeight, 0.15, 0.2)],
        Tolerances = [new(Property.Protein, 0.2), new(Property.FallingNumber, 15), new(Property.TestWeight, 0.4)],
        Extraction = new ExtractionRule(78, 0.68), // 1.5 points for the thin kernels of Scarrow Rim
    };

    internal static void KeepPapers(Mill mill) => mill.Papers(SeasonTerms.Kind).Keep(SeasonTerms.Code, 1, Terms.ToJson(), Keeper);

    private static UnitTerms Unit(string code, double rate) => new(code, rate, 24) { DaysOff = [IsoDayOfWeek.Sunday], Closed = [new(2025, 12, 25)] };

    private static FlourTerms Flour(string code, string name, string unit, double perWeek, double yield, string[] classes, double byProduct) =>
        new(code, name, unit, perWeek, yield, 900) { YearShare = 0.01, WeekShare = 0.03, Hold = 0.4, Classes = classes, LeastShare = 0.05, ByProductPerTonne = byProduct };

    private static UsualTerms Usual(string wheat, double falling, double weight) => new(wheat, [new(Property.FallingNumber, falling, 25), new(Property.TestWeight, weight, 1)]);

    private static LimitTerms Protein(double least, double? most, params ReliefStep[] relief) => new(Property.Protein, ProteinMiss) { Least = least, Most = most, Basis = Basis.At12, Relief = relief };

    private static LimitTerms Falling(double least) => new(Property.FallingNumber, FallingMiss) { Least = least };

    private static LimitTerms Weight(double least) => new(Property.TestWeight, WeightMiss) { Least = least };

    private static OfferTerms Offer(string code, string wheat, double protein, double spread, double falling, double weight, params TierTerms[] tiers) =>
        new(code, wheat, FirstOffer, MillCalendar.LastDay, 12, Quality(protein, spread, falling, 20, weight, 0.9, 0.2), tiers) { From = "country elevator E1" };

    // Days count from the first of July.
    private static ArrivalTerms Harvest(District district, int first, int last, double tonnes) =>
        new($"{district.Name} {district.Class}", district.Name, district.Class, MillCalendar.FirstDay.PlusDays(first - 1), MillCalendar.FirstDay.PlusDays(last - 1), tonnes, 0.15 * tonnes, district.Moisture,
            [.. Quality(district.Protein, 0.15, district.Falling, 6, district.TestWeight, 0.3, district.Don).Select(q => q.What switch
            {
                Property.Protein => q with { TruckSpread = district.ProteinSd, YearSpread = 0.3 },
                Property.FallingNumber => q with { TruckSpread = district.FallingSd, YearSpread = 15 },
                Property.TestWeight => q with { TruckSpread = district.TestWeightSd, YearSpread = 0.6 },
                _ => q,
            })]) { TruckTonnes = TruckTonnes, WeekShare = 0.15 };

    private static IReadOnlyList<QualityTerms> Quality(double protein, double proteinSpread, double falling, double fallingSpread, double weight, double weightSpread, double don) =>
    [
        new(Property.Protein, protein, proteinSpread) { Basis = Basis.At12 }, new(Property.FallingNumber, falling, fallingSpread), new(Property.TestWeight, weight, weightSpread),
        new(Property.Don, don, don / 2) { Basis = Basis.At12 },
    ];
}
