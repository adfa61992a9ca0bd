using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
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

    /// <param name="protein">Standard deviation of the protein of a bin, points.</param>
    /// <param name="stock">By how much a bin's stock differs from the invented one, a factor by bin.</param>
    public static SeasonSpec Spec(double protein = 0.06, Func<string, double>? stock = null, int days = 14)
    {
        var periods = SeasonCalendar.DaysThenWeeks(Start, End, days);
        var running = periods.Select(RunDays).ToArray();
        MillUnit[] units = [new("A", 17.5, [.. running.Select(d => d * 24.0)]), new("B", 7.5, [.. running.Select(d => d * 24.0)])];
        SeasonWheat[] bins = [.. Bins.Select(b => Wheat(b.Bin, b.Class, b.Tonnes * (stock?.Invoke(b.Bin) ?? 1), Quality(b.Protein, b.Fn, b.Tw, b.Don, protein), b.Bin))];
        SeasonWheat[] contracted =
        [
            Contract("N1", "HW", "Northledge", periods, 700, 12.2, 385, 79.5, .15), Contract("R1", "HW", "Scarrow Rim", periods, 120, 14.0, 420, 75.8, .10),
            Contract("L1", "HW", "Lowmere", periods, 150, 11.1, 300, 77.1, .55), Contract("T1", "SW", "Talvin Bank", periods, 110, 9.7, 340, 77.5, .30),
            Contract("H1", "HS", "High Brack", periods, 45, 14.6, 397, 80.1, .10), Contract("W1", "HWW", "Northledge", periods, 95, 13.0, 380, 79.5, .15),
        ];
        return new SeasonSpec(periods, units, [.. bins, .. contracted], Flours(running), "USD")
        {
            Homes = [.. Bins.Select(b => new SeasonHome(b.Bin, b.Capacity * 1.5))],
            StoragePerTonneWeek = 0.35,
            Offers =
            [
                Offer("E2HS", "HS", 14.8, 390, 79.5, .10, 298, 12, periods), Offer("E1HW", "HW", 13.4, 385, 78.5, .15, 268, 70, periods), Offer("E1LO", "HW", 11.8, 370, 79.0, .20, 234, 90, periods),
                Offer("E1SW", "SW", 9.8, 335, 77.0, .30, 222, 40, periods), Offer("E1WW", "HWW", 13.0, 370, 79.0, .15, 262, 12, periods),
            ],
        };
    }

    public static SeasonQuality Quality(double protein, double fn, double tw, double don, double spread, double fnSpread = 8) => new(new Dictionary<Property, SeasonValue>
    {
        [Property.Protein] = new(protein, spread, Basis.At12),
        [Property.FallingNumber] = new(fn, fnSpread),
        [Property.TestWeight] = new(tw, 0.2),
        [Property.Don] = new(don, 0.02, Basis.At12),
    });

    /// <summary>Six days a week: Sundays rest.</summary>
    public static int RunDays(SeasonPeriod period) => Enumerable.Range(0, period.Days).Count(d => period.Start.PlusDays(d).DayOfWeek != IsoDayOfWeek.Sunday);

    private static SeasonFlour[] Flours(int[] run) =>
    [
        Flour("HG", "B", 90, 0.76, run, ["HS", "HW"], Protein(14.4, 15.2), FallingNumber(330), Don(0.45)),
        Flour("WB", "A", 280, 0.74, run, ["HW", "HS"], Protein(13.2, 13.8), FallingNumber(320), TestWeight(77.5), Don(0.45)),
        Flour("AP", "A", 140, 0.76, run, ["HW"], Protein(11.7, 12.4), FallingNumber(310), Don(0.45)),
        Flour("PA", "B", 60, 0.74, run, ["SW"], Protein(8.5, 10.2), FallingNumber(290), Don(0.60)),
        Flour("WW", "B", 30, 0.97, run, ["HWW"], Protein(12.4, 14.5), FallingNumber(320), Don(0.45)),
    ];

    private static SeasonFlour Flour(string code, string unit, double wheatPerRunDay, double yield, int[] run, string[] classes, params SeasonLimit[] limits) =>
        new(code, unit, [.. run.Select(d => d * wheatPerRunDay * yield * 0.95)], yield, 900)
        {
            // Flour for three running days stays in store, so that a busy week is not a week without flour.
            Classes = classes, Limits = limits, ByProductPerTonne = 150, OpeningTonnes = 3 * wheatPerRunDay * yield, StockLeast = 3 * wheatPerRunDay * yield, StockMost = 6 * wheatPerRunDay * yield,
        };

    private static SeasonLimit Protein(double least, double most) => new(Property.Protein, least, most, 400) { Basis = Basis.At12 };

    private static SeasonLimit FallingNumber(double least) => new(Property.FallingNumber, least, null, 8);

    private static SeasonLimit TestWeight(double least) => new(Property.TestWeight, least, null, 60);

    private static SeasonLimit Don(double most) => new(Property.Don, null, most, 1000) { Basis = Basis.At12 };

    private static SeasonWheat Wheat(string code, string wheatClass, double tonnes, SeasonQuality quality, string home) => new(code, wheatClass, tonnes, 12, quality) { Home = home, EndValuePerTonne = 200 };

    private static SeasonWheat Contract(string code, string wheatClass, string district, IReadOnlyList<SeasonPeriod> periods, double perWeek, double protein, double fn, double tw, double don) =>
        Wheat(code, wheatClass, 0, Quality(protein, fn, tw, don, 0.12, 12), "") with
        {
            Deliveries = [.. periods.Select((p, t) => new SeasonDelivery(t, perWeek * RunDays(p) / 6, perWeek * RunDays(p) / 6 * 0.15) { District = district }).Where(d => d.Tonnes > 0)],
        };

    private static SeasonOffer Offer(string code, string wheatClass, double protein, double fn, double tw, double don, double price, double perRunDay, IReadOnlyList<SeasonPeriod> periods)
    {
        // Tiers hold for a period of any length, so they are given for a week; the single days before them are few.
        var wheat = new SeasonWheat(code, wheatClass, 0, 12, Quality(protein, fn, tw, don, 0.1, 10)) { EndValuePerTonne = 200 };
        return new SeasonOffer(wheat, [new(perRunDay * 6, price), new(perRunDay * 3, price + 18)], periods.TakeWhile(p => p.Days < 7).Count() + 2, periods.Count - 1);
    }
}
