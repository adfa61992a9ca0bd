using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Planning.Tests.Streams;

/// <summary>Invented surveys to divide.</summary>
internal static class Surveys
{
    /// <summary>The demonstration mill's survey of its hard unit, % of the wheat, ash and protein on 14 %.</summary>
    public static StreamTable UnitA { get; } = new(
    [
        S("1M", 14, .37, 11), S("2M", 12.5, .39, 11.1), S("1MF", 8, .40, 11.2), S("SZ1", 6.5, .42, 11), S("3M", 7, .44, 11.5), S("2B", 4.2, .50, 13.3), S("SZ2", 3.2, .52, 11.4), S("1B", 3, .52, 12.6), S("4M", 4.5, .52, 11.9),
        S("5M", 3.5, .64, 12.2), S("3B", 2.6, .68, 14.6), S("6M", 2.2, .82, 12.6), S("4B", 1.4, .98, 16), S("1T", 1, 1.10, 13.2), S("7M", 1.3, 1.15, 13), S("5B", .7, 1.30, 16.6), S("BRD", 1.3, 1.45, 15.8), S("SHD", .8, 1.60, 15),
    ], Basis.At14);

    /// <summary>Patent and two clears of it; prices invented, limits those of the demonstration mill's flours.</summary>
    public static DivideSpec Clears { get; } = new(
        UnitA,
        [
            new FlourWish("WB", 430m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.46 }], CalledFlour = true },
            new FlourWish("C1", 330m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.99 }, new FlourLimit(StreamProperty.Protein) { Least = 13.2 }], CalledFlour = true },
            new FlourWish("C2", 260m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 1.45 }] },
        ], 17.5)
    { Rest = new FlourWish("feed", 180m) };

    /// <summary>Streams of the usual shape from a seed: ash rises, protein and falling number wander.</summary>
    public static StreamTable Drawn(int streams, int seed)
    {
        var dice = new Random(seed);
        return new StreamTable([.. Enumerable.Range(0, streams).Select(i => new MillStream($"S{i:00}", Math.Round(Math.Max(0.4, 75.0 / streams * (1.8 - (1.6 * i / streams)) * (0.8 + (0.4 * dice.NextDouble()))), 2), Math.Round(0.36 + (1.3 * Math.Pow((double)i / streams, 2)) + (0.03 * dice.NextDouble()), 3))
        {
            ProteinPercent = Math.Round(10.5 + (4 * i / (double)streams) + (1.5 * dice.NextDouble()), 2), FallingNumberSeconds = Math.Round(280 + (120 * dice.NextDouble())), StarchDamagePercent = Math.Round(3 + (5 * dice.NextDouble()), 1),
        })], Basis.At14);
    }

    /// <summary>Four flours of it, with 14 ends of limits; prices invented.</summary>
    public static DivideSpec Four(StreamTable table) => new(
        table,
        [
            new FlourWish("patent", 440m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.44 }, new FlourLimit(StreamProperty.Protein) { Least = 11, Most = 12.5 }, new FlourLimit(StreamProperty.StarchDamage) { Most = 6 }], CalledFlour = true, MostYield = 45 },
            new FlourWish("bread", 425m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.54 }, new FlourLimit(StreamProperty.Protein) { Least = 11.8 }, new FlourLimit(StreamProperty.FallingNumber) { Least = 300, Most = 390 }], CalledFlour = true },
            new FlourWish("clear", 340m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 0.95 }, new FlourLimit(StreamProperty.Protein) { Least = 13 }], CalledFlour = true },
            new FlourWish("low grade", 250m) { Limits = [new FlourLimit(StreamProperty.Ash) { Most = 1.5 }] },
        ], 17.5)
    { Rest = new FlourWish("feed", 180m) };

    private static MillStream S(string code, double yield, double ash, double protein) => new(code, yield, ash) { ProteinPercent = protein };
}
