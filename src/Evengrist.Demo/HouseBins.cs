using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.Shape;
using Evengrist.Records;

namespace Evengrist.Demo;

/// <summary>What the mill keeps about its bins beside the facts: shapes, bands, pack factors and what a tonne is worth. All invented; the shapes hold what the bins' capacities say.</summary>
public static class HouseBins
{
    private const string Keeper = "Ines Calloway";

    private static readonly BinShape Flat = new() { DiameterMetres = 26, WallMetres = 21, Note = "flat bottom, invented" };
    private static readonly BinShape Hopper = new() { DiameterMetres = 18, WallMetres = 19.6, HopperDegrees = 45, OutletMetres = 1, Note = "hopper, invented" };
    private static readonly BinShape Steep = new() { DiameterMetres = 9.5, WallMetres = 22.4, HopperDegrees = 60, OutletMetres = 0.8, Note = "steep hopper, invented" };

    /// <summary>The bands of the bins that have one; hold bins and the small ones have none.</summary>
    public static IReadOnlyDictionary<string, BinBand> Bands { get; } = new Dictionary<string, BinBand>
    {
        ["B01"] = Sound("ordinary", 9.5, 12.2), ["B02"] = Sound("ordinary", 11.5, 12.7), ["B03"] = Sound("middling", 11.9, 13.1), ["B04"] = Sound("good", 12.4, 13.7),
        ["B05"] = Band("thin and strong, Scarrow Rim", 12.6, 17.5) with { TestWeightTo = 78.2 }, ["B06"] = Band("strong", 12.8, 14.4) with { FallingNumberFrom = 345, TestWeightFrom = 76.5 },
        ["B07"] = Band("low falling number, Lowmere", 8, 15) with { FallingNumberTo = 345 },
        ["B08"] = Band("soft", 7.5, 10.0), ["B09"] = Band("soft, higher protein", 9.6, 12), ["B10"] = Band("spring", 13.0, 14.7), ["B11"] = Band("spring", 14.2, 15.1), ["B12"] = Band("strong spring", 14.7, 17),
        ["B13"] = Band("hard white", 11.5, 15),
    };

    /// <summary>What a tonne is worth by class and protein.</summary>
    public static BandValues Values { get; } = new("USD", new Dictionary<string, IReadOnlyList<ValuePoint>>
    {
        ["HW"] = [new(10, 200), new(11, 212), new(12, 229), new(13, 240), new(13.5, 247), new(14, 257), new(14.5, 266)],
        ["HS"] = [new(13, 252), new(14.2, 264), new(14.6, 268), new(15.1, 275), new(16, 286)],
        ["SW"] = [new(8.5, 214), new(9.7, 218), new(10.5, 216), new(11.5, 210)],
        ["HWW"] = [new(11.5, 232), new(12.5, 242), new(13.5, 250)],
    }, "invented, for the demonstration");

    /// <summary>The shape of a bin.</summary>
    public static BinShape ShapeOf(string bin) => int.Parse(bin.AsSpan(1), System.Globalization.CultureInfo.InvariantCulture) switch { <= 8 => Flat, <= 13 => Hopper, _ => Steep };

    /// <summary>The pack factor of a bin: found for B14 by weighing it out over the mix line's belt, from memory for the others.</summary>
    public static PackFactor PackOf(string bin) => bin == "B14" ? new PackFactor(1.052, 0.011, "calibrated by one weigh-out: 15 to 19 September 2025, over the belt of mix line A (invented)") { IsCalibrated = true } : PackFactor.FromMemory;

    internal static void Keep(Mill mill, BinPlan plan)
    {
        foreach (var bin in plan.Bins)
        {
            mill.Papers(BinPapers.Shape).Keep(bin.Code, 1, BinPapers.Write(ShapeOf(bin.Code)), Keeper);
        }

        foreach (var (bin, band) in Bands)
        {
            mill.Papers(BinPapers.Band).Keep(bin, 1, BinPapers.Write(band), Keeper);
        }

        mill.Papers(BinPapers.Calibration).Keep("B14", 1, BinPapers.Write(PackOf("B14")), Keeper);
        mill.Papers(BinPapers.Values).Keep(BinPapers.HouseValues, 1, BinPapers.Write(Values), Keeper);
    }

    private static BinBand Sound(string name, double from, double to) => Band(name, from, to) with { FallingNumberFrom = 345, TestWeightFrom = 77 };

    private static BinBand Band(string name, double from, double to) => new() { Name = name, ProteinFrom = from, ProteinTo = to };
}
