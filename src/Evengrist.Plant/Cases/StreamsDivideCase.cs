using Evengrist.Streams.Dividing;

namespace Evengrist.Plant.Cases;

/// <summary>A question about the best divide of flour streams, posed in JSON.</summary>
public static class StreamsDivideCase
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "table": { "basis": "14mb", "streams": [ { "code", "yield": % of the wheat, one wheat for all, "ashPercent", "proteinPercent"?, "fallingNumberSeconds"?, "starchDamagePercent"? } ... ],
                     "methods"?: { "ash"?: 0.01, "protein"?: 0.1, "fallingNumberShare"?: 0.05, "starchDamage"?: 0.3, "yieldShare"?: 0.02 }   one standard uncertainty each },
          "flours": [ { "code", "pricePerTonne", "leastYield"?, "mostYield"?: % of the wheat, "calledFlour"?: true | false,
                        "limits"?: [ { "what": "Ash" | "Protein" | "FallingNumber" | "StarchDamage", "least"?, "most"? } ... ] } ... ],
          "rest"?: { "code", "pricePerTonne" }   where goes what goes to no flour,
          "valves"?: [ { "stream", "splits"?: true | false, "may"?: [ flours ], "locked"?: flour or rest, "now"?: flour or rest } ... ]   a stream without one goes whole, anywhere,
          "rateTonnesPerHour": of the wheat, "hoursPerDay"?: 24, "sure"?: 0.9   the chance with which each limit has to be kept, the mean otherwise, "currency"?: "USD"
        }
        """,
        """
        { "table": { "basis": "14mb", "streams": [ { "code": "1M", "yield": 40, "ashPercent": 0.39, "proteinPercent": 11 }, { "code": "3B", "yield": 20, "ashPercent": 0.55, "proteinPercent": 13 }, { "code": "4B", "yield": 10, "ashPercent": 0.95, "proteinPercent": 15 } ] },
          "flours": [ { "code": "patent", "pricePerTonne": 430, "limits": [ { "what": "Ash", "most": 0.45 } ], "calledFlour": true }, { "code": "clear", "pricePerTonne": 320, "limits": [ { "what": "Protein", "least": 13 } ] } ],
          "rest": { "code": "feed", "pricePerTonne": 180 }, "rateTonnesPerHour": 17.5 }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<DivideSpec> Read(Stream stream) => SeasonCase.ReadAs<DivideSpec>(stream).Then(spec =>
        spec.Table.Streams.Any(s => s is null) || spec.Flours.Append(spec.Rest).Any(f => f is null || f.Limits.Any(l => l is null)) || spec.Valves.Any(v => v is null)
            ? Parsing.Failed<DivideSpec>(Fault.AtPath("$", "null in a list", "something in its place"))
            : DivideFaults.Of(spec) is { Count: > 0 } faults ? Parsing.Failed<DivideSpec>([.. faults.Select(f => Fault.Told("$", f))]) : Parsing.Got(spec));
}
