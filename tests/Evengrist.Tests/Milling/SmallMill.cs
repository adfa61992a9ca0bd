using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Tests.Milling;

/// <summary>An invented mill of nine passages with two loops, for laws.</summary>
internal static class SmallMill
{
    public static FlowSheet Sheet { get; } = new(
        "small", "1B",
        [
            new Passage("1B", PassageKind.Break, [Over(1120, "2B"), Over(500, "SZ"), Through(132, "1B-flour")], [new Spout("P1")]) { Rolls = Fluted(500, 9000), ClothSquareMetres = 30 },
            new Passage("2B", PassageKind.Break, [Over(1000, "3B"), Over(450, "SZ"), Through(132, "2B-flour")], [new Spout("P1")]) { Rolls = Fluted(250, 8000), ClothSquareMetres = 24 },
            new Passage("3B", PassageKind.Break, [Over(850, "BF"), Through(132, "3B-flour")], [new Spout("2M")]) { Rolls = Fluted(140, 8000), ClothSquareMetres = 16 },
            new Passage("SZ", PassageKind.Sizing, [Over(530, "3B"), Over(300, "P1"), Through(132, "SZ-flour")], [new Spout("1M")]) { Rolls = Fluted(150, 6000, 8), ClothSquareMetres = 14 },
            new Passage("P1", PassageKind.Purifying, [new Cloth(300, ClothSide.Throughs, [new Spout("1M")]), new Cloth(600, ClothSide.Throughs, [new Spout("SZ", 0.6), new Spout("1M", 0.4)])], [new Spout("3B")])
            {
                AirMetresPerSecond = 0.7, Lifted = [new Spout("wheatfeed")], ClothSquareMetres = 10,
            },
            new Passage("1M", PassageKind.Reduction, [Over(300, "3M"), Through(132, "1M-flour")], [new Spout("2M")]) { Rolls = new RollPair(70, 9000), Detacher = true, ClothSquareMetres = 20 },
            new Passage("2M", PassageKind.Reduction, [Over(300, "3M"), Through(132, "2M-flour")], [new Spout("3M")]) { Rolls = new RollPair(50, 9000), Detacher = true, ClothSquareMetres = 18 },
            new Passage("3M", PassageKind.Reduction, [Over(300, "wheatfeed"), Through(125, "3M-flour")], [new Spout("2M", 0.3), new Spout("wheatfeed", 0.7)]) { Rolls = new RollPair(40, 9000), Detacher = true, ClothSquareMetres = 18 },
            new Passage("BF", PassageKind.Finishing, [Over(600, "bran"), Through(180, "BF-flour")], [new Spout("wheatfeed")]) { ClothSquareMetres = 6 },
        ],
        [.. new[] { "1B", "2B", "3B", "SZ", "1M", "2M", "3M", "BF" }.Select(c => new MillProduct(c + "-flour", ProductKind.Flour)), new MillProduct("bran", ProductKind.Bran), new MillProduct("wheatfeed", ProductKind.Wheatfeed)]);

    public static MillWheat Wheat { get; } = Of(65);

    public static MillWheat Of(double hardness, double moisture = 16) => new(8, moisture, [new KernelClass(1, 2.9, hardness)], KernelMake.Of(1.7, 14.2, 380));

    public static FlowSheet WithGap(string code, double micrometres) => Sheet with { Passages = [.. Sheet.Passages.Select(p => p.Code == code ? p with { Rolls = p.Rolls! with { GapMicrometres = micrometres } } : p)] };

    private static Cloth Over(double aperture, string to) => new(aperture, ClothSide.Overs, [new Spout(to)]);

    private static Cloth Through(double aperture, string to) => new(aperture, ClothSide.Throughs, [new Spout(to)]);

    private static RollPair Fluted(double gap, double length, double flutes = 5) => new(gap, length) { FlutesPerCentimetre = flutes, Disposition = Disposition.SharpToSharp, Differential = 2.5 };
}
