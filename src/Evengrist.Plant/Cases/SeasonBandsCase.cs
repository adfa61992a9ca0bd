using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Plant.Cases;

/// <summary>A harvest posed in JSON that is to be parted into bands, with the crop year it comes into.</summary>
/// <param name="Season">The year without that harvest.</param>
/// <param name="Harvest">The harvest, how it is read, and how many bins there are for it.</param>
public sealed record SeasonBandsCase(SeasonSpec Season, BandSpec Harvest)
{
    /// <summary>What a t of it left at the end is worth, money per t.</summary>
    public double EndValuePerTonne { get; init; }

    /// <summary>The bins by code with their free room; empty where only their number is known.</summary>
    public IReadOnlyList<SeasonHome> Bins { get; init; } = [];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "season": as in season plan, without the harvest,
          "harvest": { "wheatClass", "parts": [ { "district", "tonnes", "moisturePercent", "quality": { "Protein": { "value", "spread" from truck to truck, "basis": "12mb" } ... } } ... ],
                       "bins": the most bands, 1 to 20, "basis"?: "12mb" of the edges, "readingSpread"?: points, "fallingNumberEdges"?: [ s, rising ], "fallingNumberReadingSpread"?: s,
                       "arriving"?: [ share in each period, 1 in all ], "step"?: 0.1 points },
          "bins"?: [ { "code", "capacityTonnes": free room } ... ], "endValuePerTonne"?: 0
        }
        """,
        SeasonCase.Help.Example.TrimEnd()[..^1].TrimEnd() + """
        ,
          "harvest": { "wheatClass": "HW", "bins": 2, "readingSpread": 0.25, "step": 0.25,
            "parts": [ { "district": "North", "tonnes": 120, "moisturePercent": 12, "quality": { "Protein": { "value": 13.2, "spread": 0.8, "basis": "12mb" } } } ] },
          "bins": [ { "code": "B03", "capacityTonnes": 80 }, { "code": "B04", "capacityTonnes": 80 } ], "endValuePerTonne": 220 }
        """);

    /// <summary>Reads a case; what is wrong with the season or the harvest is a fault too.</summary>
    public static Parsed<SeasonBandsCase> Read(Stream stream) => SeasonCase.ReadAs<SeasonBandsCase>(stream).Then(c => SeasonCase.Sound(c, c.Season)).Then(c =>
    {
        if (c.Harvest.Parts.Any(p => p is null) || c.Bins.Any(b => b is null))
        {
            return Parsing.Failed<SeasonBandsCase>(Fault.AtPath("$.harvest", "null in a list", "a district or a bin in its place"));
        }

        List<Fault> faults = [.. BandFaults.Of(c.Harvest, c.Season).Select(f => Fault.Told($"$.harvest, {f.Where}", f.What))];
        faults.AddRange(c.Bins.Where(b => !(b.CapacityTonnes >= 0) || !double.IsFinite(b.CapacityTonnes)).Select(b => Fault.AtPath($"$.bins, {b.Code}", $"{b.CapacityTonnes}", "its free room, t, 0 or more")));
        if (c.Bins.Count > 0 && c.Bins.Count < c.Harvest.Bins)
        {
            faults.Add(Fault.AtPath("$.bins", $"{c.Bins.Count} bins", $"one for each of the {c.Harvest.Bins} bands, or fewer bands"));
        }

        if (!double.IsFinite(c.EndValuePerTonne))
        {
            faults.Add(Fault.AtPath("$.endValuePerTonne", $"{c.EndValuePerTonne}", "a number"));
        }

        return faults.Count > 0 ? Parsing.Failed<SeasonBandsCase>(faults) : Parsing.Got(c);
    });
}
