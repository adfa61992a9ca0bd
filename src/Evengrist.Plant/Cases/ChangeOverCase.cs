using Evengrist.Season.ChangeOver;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A change from old crop to new posed in JSON.</summary>
/// <param name="FirstDay">The day on which the first step begins.</param>
/// <param name="Change">The steps and the flours.</param>
public sealed record ChangeOverCase(LocalDate FirstDay, ChangeOverSpec Change)
{
    /// <summary>The last day on which old crop is to be milled; null for no such day. The last step has to begin by the day after it.</summary>
    public LocalDate? LastOldDay { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "firstDay": date, "lastOldDay"?: date,
          "change": {
            "steps": [ share of new crop, rising, the last one 1 ], "daysPerStep": 1 or more,
            "flours": [ { "code", "old": { "moisturePercent", "quality": { "Protein": { "value", "spread": what it may be off by, "basis": "12mb" }, "FallingNumber": { "value", "spread" } ... } }, "new": as old,
                          "limits": [ { "what", "least"?, "most"?, "missPrice": any, "basis"? } ... ] } ... ],
            "largestMoves"?: [ { "what": "Protein", "by": points from one step to the next } ... ]
          }
        }
        Values are of the wheat mix.
        """,
        """
        { "firstDay": "2026-07-20", "lastOldDay": "2026-08-20",
          "change": { "steps": [ 0.15, 0.3, 0.5, 0.75, 1 ], "daysPerStep": 4,
            "flours": [ { "code": "WB",
                          "old": { "moisturePercent": 12, "quality": { "Protein": { "value": 13.3, "spread": 0.05, "basis": "12mb" }, "FallingNumber": { "value": 390, "spread": 8 } } },
                          "new": { "moisturePercent": 12.5, "quality": { "Protein": { "value": 12.7, "spread": 0.2, "basis": "12mb" }, "FallingNumber": { "value": 330, "spread": 20 } } },
                          "limits": [ { "what": "Protein", "least": 13.1, "most": 13.7, "missPrice": 60, "basis": "12mb" }, { "what": "FallingNumber", "least": 320, "missPrice": 1 } ] } ],
            "largestMoves": [ { "what": "Protein", "by": 0.2 } ] } }
        """);

    /// <summary>Reads a case; what cannot be laid out is a fault too.</summary>
    public static Parsed<ChangeOverCase> Read(Stream stream) => SeasonCase.ReadAs<ChangeOverCase>(stream).Then(c =>
    {
        if (c.Change.Flours.Any(f => f is null || f.Limits.Any(l => l is null)) || c.Change.LargestMoves.Any(m => m is null))
        {
            return Parsing.Failed<ChangeOverCase>(Fault.AtPath("$.change", "null in a list", "something in its place"));
        }

        List<Fault> faults = [.. ChangeOverFaults.Of(c.Change).Select(f => Fault.Told($"$.change, {f.Where}", f.What))];
        if (c.LastOldDay is { } last && last < c.FirstDay)
        {
            faults.Add(Fault.AtPath("$.lastOldDay", $"{last:uuuu-MM-dd}", $"a day not before the first, {c.FirstDay:uuuu-MM-dd}"));
        }
        else if (faults.Count == 0 && c.LastOldDay is { } end && c.FirstDay.PlusDays((c.Change.Steps.Count - 1) * c.Change.DaysPerStep) is var whole && whole > end.PlusDays(1))
        {
            faults.Add(Fault.AtPath("$.lastOldDay", $"{end:uuuu-MM-dd}", $"old crop until {whole.PlusDays(-1):uuuu-MM-dd}, when the last of {c.Change.Steps.Count} steps of {c.Change.DaysPerStep} days begins: fewer or shorter steps, or a later day"));
        }

        return faults.Count > 0 ? Parsing.Failed<ChangeOverCase>(faults) : Parsing.Got(c);
    });
}
