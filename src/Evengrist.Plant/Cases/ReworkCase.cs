using Evengrist.Packing.Rework;

namespace Evengrist.Plant.Cases;

/// <summary>Totes and a run posed in JSON.</summary>
/// <param name="Totes">The totes.</param>
/// <param name="Run">The run.</param>
public sealed record ReworkCase(IReadOnlyList<ReworkTote> Totes, ReworkRun Run)
{
    /// <summary>The mill's rules; the program's own where left out.</summary>
    public ReworkRules Rules { get; init; } = ReworkRules.Start;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "totes": [ { "code", "flour", "grams", "ageDays", "alsoOf"?: [ flours ], "allergens"?: [ beyond wheat ], "leastEnriched"?: 0, "mostEnriched"?: fraction, "reason"?, "hold"? } ... ],
          "run": { "flour", "tonnesPerHour"?, "allergens"?: [ its label names ], "isEnriched"?: false, "values"?: [ { "what", "ofRun", "ofRework", "least"?, "most"? } ... ] },
          "rules"?: { "mostDays"?: 30, "mostPercent"?: 5, "doses"?: [ { "flour", "mostPercent" } ... ], "matches"?: [ { "of", "into" } ... ], "carriers"?, "premixes"? }
        }
        """,
        """
        { "totes": [ { "code": "R-1", "flour": "WB", "grams": 6000000, "ageDays": 12, "reason": "ash above the limit" }, { "code": "R-2", "flour": "SM", "grams": 800000, "ageDays": 20, "allergens": [ "soy" ], "reason": "torn packs" } ],
          "run": { "flour": "WB", "tonnesPerHour": 12.075, "values": [ { "what": "protein, 14mb", "ofRun": 11.65, "ofRework": 12.85, "least": 11.6, "most": 12.1 } ] } }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<ReworkCase> Read(Stream stream) => SeasonCase.ReadAs<ReworkCase>(stream).Then(c =>
        c.Totes.Any(t => t is null) || c.Run.Values.Any(v => v is null) ? Parsing.Failed<ReworkCase>(Fault.AtPath("$", "null in a list", "something in its place"))
            : (string[])[.. c.Totes.SelectMany(t => t.Faults()), .. c.Run.Faults(), .. c.Rules.Faults()] is { Length: > 0 } faults ? Parsing.Failed<ReworkCase>([.. faults.Select(f => Fault.Told("$", f))]) : Parsing.Got(c));
}
