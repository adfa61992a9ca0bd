using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Packing.NetContent;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Weights of the demonstration's checkweighers in the days before the opening moment, as many as the ledger's pallets hold; empty bags weighed; how pallets are numbered. All invented. A delivery of bags with a third ply came on 9 January, and the checkweigher of line 1 still takes the old tare off.</summary>
internal static class ContentBooks
{
    private const string Packer = "Greta Sowden";
    private static readonly Instant From = MillCalendar.At(new LocalDate(2026, 1, 2), 6), HeavierBags = MillCalendar.At(new LocalDate(2026, 1, 9), 8, 20);
    private static readonly (string Line, string Product, int Each, Instant Since)[] Weighed = [("L1", "WB-25", 40, From), ("L2", "WB-2", 500, HeavierBags)];

    /// <summary>Keeps them.</summary>
    public static void Keep(Mill mill, ulong seed)
    {
        KeepUnitNumbering.Keep(mill, new UnitNumbering("9521234") { First = 42 }, Packer);
        TareSamples.Keep(mill, new TareSample("WB-25", MillCalendar.At(new LocalDate(2026, 1, 2), 7, 10), [180.4, 179.1, 181.0, 180.2, 178.8, 179.9, 180.6, 180.3, 179.4, 180.5], "two plies, delivery of 15 December"), Packer, MillCalendar.OpeningMoment);
        TareSamples.Keep(mill, new TareSample("WB-25", HeavierBags, [228.2, 227.1, 229.0, 228.6, 227.5, 228.3, 226.9, 228.8, 229.4, 227.7], "three plies, delivery of 9 January"), Packer, MillCalendar.OpeningMoment);
        TareSamples.Keep(mill, new TareSample("WB-2", MillCalendar.At(new LocalDate(2026, 1, 5), 9), [22.1, 21.9, 22.0, 22.2, 21.8, 22.0, 22.1, 21.9, 22.0, 22.1], "reel 4"), Packer, MillCalendar.OpeningMoment);
        foreach (var (line, product, each, since) in Weighed)
        {
            WeighedHours.Keep(mill, Hours(mill, line, product, each, since, new Dice(seed, $"checkweigher {line}")), Packer);
        }
    }

    // Packages pass the checkweigher in the twenty minutes before their pallets are counted.
    private static WeighedHour[] Hours(Mill mill, string line, string code, int each, Instant since, Dice dice)
    {
        var product = HouseProducts.All.Single(p => p.Code == code);
        var counted = mill.Ask(view => view.Book.MovementsOf(view.Book.Named(line).Id).Select(m => view.Book.Movements[m])
            .Where(m => m.From == view.Book.Named(line).Id && m.Until >= since && m.Until <= MillCalendar.OpeningMoment && view.Book[m.To] is { Kind: PlaceKind.Pallet } to && to.Material == product.Flour && to.Name == product.PackedAs)
            .GroupBy(m => m.Until).OrderBy(g => g.Key).Select(g => (At: g.Key, Packages: g.Count() * each)).ToArray());
        var packages = new List<WeighedPackage>();
        foreach (var (at, count) in counted)
        {
            for (var n = 0; n < count; n++)
            {
                packages.Add(Package(product.PackGrams, (int)product.TareGrams, at - Duration.FromSeconds(4 + (1190.0 * n / count)), dice));
            }
        }

        return [.. packages.GroupBy(p => WeighedHour.HourOf(p.At)).Select(g => new WeighedHour(line, code, g.Key, [.. g.Order()]))];
    }

    // The fill wanders a little from hour to hour; a package far below is thrown out.
    private static WeighedPackage Package(long label, int tare, Instant at, Dice dice)
    {
        var (above, spread, wander) = label > 10_000 ? (34, 17, 6) : (6, 4.2, 1.2);
        var net = label + above + (wander * Math.Sin(at.ToUnixTimeSeconds() / 17_000.0)) + dice.Normal(0, spread);
        return new(Instant.FromUnixTimeMilliseconds(at.ToUnixTimeMilliseconds()), (int)Math.Round(10 * (net + tare)), 10 * tare, net < label - (2.6 * spread));
    }
}
