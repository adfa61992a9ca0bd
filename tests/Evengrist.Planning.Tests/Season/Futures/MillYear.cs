using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Terms;
using NodaTime;

namespace Evengrist.Planning.Tests.Season.Futures;

/// <summary>The demonstration mill on 15 Sep 2025: bins, districts and campaigns as invented for it; the flour limits on the wheat mix, contracts and prices are invented here.</summary>
internal static class MillYear
{
    public static readonly LocalDate Start = new(2025, 9, 15);
    public static readonly LocalDate End = new(2026, 6, 30);

    // Bin, class, t, protein 12mb, falling number s, test weight kg/hL, deoxynivalenol mg/kg.
    public static readonly (string Bin, string Class, double Tonnes, double Protein, double Fn, double Tw, double Don, double Capacity)[] Bins =
    [
        ("B01", "HW", 8200, 11.8, 381, 79.8, .15, 10000), ("B02", "HW", 9100, 12.1, 382, 79.4, .15, 10000), ("B03", "HW", 7600, 12.5, 388, 79.1, .15, 10000),
        ("B04", "HW", 8800, 12.9, 391, 78.6, .15, 10000), ("B05", "HW", 6900, 13.9, 418, 75.9, .10, 10000), ("B06", "HW", 5200, 13.3, 405, 77.0, .12, 10000),
        ("B07", "HW", 7400, 11.0, 262, 77.1, .70, 10000), ("B08", "SW", 6100, 9.5, 341, 77.6, .30, 10000), ("B09", "SW", 3300, 10.1, 336, 77.2, .30, 5000),
        ("B10", "HS", 4500, 14.2, 397, 80.4, .10, 5000), ("B11", "HS", 4300, 14.6, 396, 80.2, .10, 5000), ("B12", "HS", 3900, 15.1, 401, 79.8, .10, 5000),
        ("B13", "HWW", 3600, 13.0, 372, 79.6, .15, 5000), ("B14", "HW", 738, 12.8, 385, 78.4, .15, 1500), ("B15", "HW", 1100, 12.4, 384, 79.0, .15, 1500),
        ("B16", "HS", 1200, 14.8, 392, 80.0, .10, 1500),
    ];

    /// <summary>What the year is planned by, before anything is known of how far it may differ.</summary>
    public static SeasonTerms Terms { get; } = new()
    {
        End = End,
        Currency = "USD",
        StoragePerTonneWeek = 0.35,
        Units = [Unit("A", 17.5), Unit("B", 7.5)],
        Flours =
        [
            Flour("HG", "B", 90, 0.76, ["HS", "HW"], Protein(14.4, 15.2), FallingNumber(330), Don(0.45)),
            Flour("WB", "A", 280, 0.74, ["HW", "HS"], Protein(13.2, 13.8), FallingNumber(320), TestWeight(77.5), Don(0.45)),
            Flour("AP", "A", 140, 0.76, ["HW"], Protein(11.7, 12.4), FallingNumber(310), Don(0.45)),
            Flour("PA", "B", 60, 0.74, ["SW"], Protein(8.5, 10.2), FallingNumber(290), Don(0.60)),
            Flour("WW", "B", 30, 0.97, ["HWW"], Protein(12.4, 14.5), FallingNumber(320), Don(0.45)),
        ],
        Offers =
        [
            Offer("E2HS", "HS", 14.8, 390, 79.5, .10, 298, 12), Offer("E1HW", "HW", 13.4, 385, 78.5, .15, 268, 70), Offer("E1LO", "HW", 11.8, 370, 79.0, .20, 234, 90),
            Offer("E1SW", "SW", 9.8, 335, 77.0, .30, 222, 40), Offer("E1WW", "HWW", 13.0, 370, 79.0, .15, 262, 12),
        ],
        Arrivals =
        [
            Contract("N1", "HW", "Northledge", 700, 12.2, 385, 79.5, .15), Contract("R1", "HW", "Scarrow Rim", 120, 14.0, 420, 75.8, .10), Contract("L1", "HW", "Lowmere", 150, 11.1, 300, 77.1, .55),
            Contract("T1", "SW", "Talvin Bank", 110, 9.7, 340, 77.5, .30), Contract("H1", "HS", "High Brack", 45, 14.6, 397, 80.1, .10), Contract("W1", "HWW", "Northledge", 95, 13.0, 380, 79.5, .15),
        ],
        EndWorths = [new("HW", 200), new("HS", 200), new("SW", 200), new("HWW", 200)],
    };

    /// <summary>The year as a mill plans it from its terms and its bins.</summary>
    /// <param name="terms">The terms.</param>
    /// <param name="stock">By how much a bin's stock differs from the invented one, a factor by bin.</param>
    /// <param name="days">How many single days come first.</param>
    public static SeasonSpec Spec(SeasonTerms terms, Func<string, double>? stock = null, int days = 14) => SpecFromTerms.Of(
        terms, Start, [.. Bins.Select(b => new SeasonWheat(b.Bin, b.Class, b.Tonnes * (stock?.Invoke(b.Bin) ?? 1), 12, QualityTerms.Of(Quality(b.Protein, 0.06, b.Fn, 8, b.Tw, b.Don))) { Home = b.Bin })],
        [.. Bins.Select(b => new SeasonHome(b.Bin, b.Capacity * 1.5))], terms.Flours.ToDictionary(f => f.Code, f => f.StockLeast), days);

    private static QualityTerms[] Quality(double protein, double spread, double fn, double fnSpread, double tw, double don) =>
    [
        new(Property.Protein, protein, spread) { Basis = Basis.At12 }, new(Property.FallingNumber, fn, fnSpread), new(Property.TestWeight, tw, 0.2), new(Property.Don, don, 0.02) { Basis = Basis.At12 },
    ];

    // Six days a week: Sundays rest.
    private static UnitTerms Unit(string code, double rate) => new(code, rate, 24) { DaysOff = [IsoDayOfWeek.Sunday] };

    private static FlourTerms Flour(string code, string unit, double wheatPerRunDay, double yield, string[] classes, params LimitTerms[] limits) =>
        new(code, code, unit, 6 * wheatPerRunDay * yield * 0.95, yield, 900)
        {
            // Flour for three running days stays in store, so that a busy week is not a week without flour.
            Classes = classes, Limits = limits, ByProductPerTonne = 150, StockLeast = 3 * wheatPerRunDay * yield, StockMost = 6 * wheatPerRunDay * yield,
        };

    private static LimitTerms Protein(double least, double most) => new(Property.Protein, 400) { Least = least, Most = most, Basis = Basis.At12 };

    private static LimitTerms FallingNumber(double least) => new(Property.FallingNumber, 8) { Least = least };

    private static LimitTerms TestWeight(double least) => new(Property.TestWeight, 60) { Least = least };

    private static LimitTerms Don(double most) => new(Property.Don, 1000) { Most = most, Basis = Basis.At12 };

    private static ArrivalTerms Contract(string code, string wheatClass, string district, double perWeek, double protein, double fn, double tw, double don) =>
        new(code, district, wheatClass, Start, End, perWeek * (Period.DaysBetween(Start, End) + 1) / 7, 0, 12, Quality(protein, 0.12, fn, 12, tw, don));

    private static OfferTerms Offer(string code, string wheatClass, double protein, double fn, double tw, double don, double price, double perRunDay) =>
        new(code, wheatClass, Start.PlusDays(14), End, 12, Quality(protein, 0.1, fn, 10, tw, don), [new(perRunDay * 6, price), new(perRunDay * 3, price + 18)]);
}
