namespace Evengrist.Intake.Sampling;

/// <summary>The sampling rules held, each with how well it is known. None was read in the standard itself.</summary>
/// <remarks>Model: docs/model/sampling.md. 4 ft = 1.2192 m; 10 lb = 4,536 g.</remarks>
public static class ProbePatterns
{
    private const decimal FourFeet = 1.2192m;
    private const int TwoKilograms = 2000;
    private const string UsPractice = "US probing practice";
    private const string TwoKilogramsNote = "US practice takes 2,000 g at least, about 1,000 g to work on and the rest to keep (from memory).";

    /// <summary>US, flat-bottom truck: 9 probes where the grain is 4 ft deep or less, 7 where it is deeper.</summary>
    public static ProbePattern UsFlatBottom { get; } = new(
        "us-flat-bottom", "US probe, flat bottom", PointSpread.Columns, [new(FourFeet, 9, TwoKilograms), new(null, 7, TwoKilograms)], ProbeBy.Depth, Standing.Doubtful, UsPractice)
    {
        For = [VehicleKind.FlatBottom], Notes = ["The first probe stands near a corner, about 2 ft (0.61 m) from the sides.", TwoKilogramsNote],
    };

    /// <summary>US, hopper-bottom truck: about 5 to 7 probes over all hoppers, off-centre as well as centre.</summary>
    public static ProbePattern UsHopperBottom { get; } = new(
        "us-hopper-bottom", "US probe, hopper bottom", PointSpread.Hoppers, [new(null, 6, TwoKilograms)], ProbeBy.Nothing, Standing.Doubtful, UsPractice)
    {
        For = [VehicleKind.HopperBottom], Notes = ["About 5 to 7 probes over all hoppers: 5 for one hopper, 6 for two or three, 7 for more (the split is ours).", TwoKilogramsNote],
    };

    /// <summary>International static sampling: 5 points up to 15 t, 8 up to 30 t, 11 up to 50 t.</summary>
    public static ProbePattern StaticByMass { get; } = new(
        "static-by-mass", "static sampling by mass", PointSpread.Columns, [new(15m, 5), new(30m, 8), new(50m, 11)], ProbeBy.Mass, Standing.Memory, "the ISO 24333 family");

    /// <summary>A published procedure for DON in truckloads: at least 11 points at random, at least 500 g each.</summary>
    public static ProbePattern DonTruck { get; } = new(
        "don-truck", "DON in a truckload", PointSpread.Scatter, [new(null, 11)], ProbeBy.Nothing, Standing.Read, "DON measurement procedure for truck-loaded bulk wheat (abstract)")
    {
        IncrementGrams = 500,
        Notes =
        [
            "Homogenise the composite three times; laboratory sample of 750 g or more, ground to 1 mm, 5 g portion. The abstract gives a total relative error of 12.9 %.",
            "About 4.5 kg (10 lb) is the usual composite for a toxin (mycotoxinbmps.tamu.edu, sampling upon delivery).",
        ],
    };

    /// <summary>EU official control of mycotoxins in cereal lots: increments of about 100 g by mass of the lot.</summary>
    public static ProbePattern EuMycotoxin { get; } = new(
        "eu-mycotoxin", "EU mycotoxin control", PointSpread.Scatter,
        [new(0.05m, 3, 1000), new(0.5m, 5, 1000), new(1m, 10, 1000), new(3m, 20, 2000), new(10m, 40, 4000), new(20m, 60, 6000), new(50m, 100, 10_000), new(null, 100, 10_000)],
        ProbeBy.Mass, Standing.Memory, "Regulation (EC) 401/2006, annex (the regulation exists; its table was not read)")
    {
        IncrementGrams = 100, Notes = ["Lots of 50 t and more are split into sublots: 100 t, or 500 t for a lot above 1,500 t (from memory)."],
    };

    /// <summary>Cuts across the whole stream while the truck empties: at least 3.</summary>
    public static ProbePattern StreamCuts { get; } = new(
        "stream-cuts", "cuts of the stream", PointSpread.Stream, [new(null, 3, TwoKilograms)], ProbeBy.Nothing, Standing.Read, "Practical Procedures for Sampling Grain at Farm Sites, archived USDA page")
    {
        Notes = ["Cut the whole stream, at least three times a carrier; skip the first seconds and the last bushels.", TwoKilogramsNote],
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ProbePattern> All { get; } = [UsFlatBottom, UsHopperBottom, StaticByMass, DonTruck, EuMycotoxin, StreamCuts];

    /// <summary>The rule with the code, case not mattering; null where there is none.</summary>
    public static ProbePattern? Find(string? code) => All.FirstOrDefault(p => p.Code.Equals(code, StringComparison.OrdinalIgnoreCase));
}
