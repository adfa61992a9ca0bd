using Evengrist.Packing.Runs;

namespace Evengrist.Plant.Cases;

/// <summary>Packing runs posed in JSON to be put in order.</summary>
public static class PackingPlanCase
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          all times in minutes from the start of the plan
          "runs": [ { "code", "flour", "tonnes", "due", "places": [ { "line", "minutes" } ... ], "ready"?: 0, "weight"?: 1, "bin"?: that feeds it, "locked"?: { "line", "start" } } ... ] in the order in which they were asked for,
          "lines": [ { "code", "freeFrom"?: 0, "lastFlour"?, "crew"?: 1 } ... ],
          "rules": [ { "after"?, "into"?: flours, any when left out, "minutes", "eitherWay"?: false, "flushTonnes"?: 0, "flushTo"?, "isCleanDown"?: false } ... ] the first that fits holds,
          "allergens"?: { flour: [ beyond wheat ] ... }, "mayCleanDown"?: true,
          "bins"?: [ { "code", "tonnes", "capacity", "inflows": [ { "from", "until", "tonnesPerHour" } ... ] } ... ], "crew"?: [ { "from", "until", "people" } ... ],
          "costs"?: { "latePerHour"?: 1000, "changePerHour"?: 120, "flushPerTonne"?: 150 }
        }
        """,
        """
        { "runs": [ { "code": "Bread", "flour": "WB", "tonnes": 60, "due": 600, "places": [ { "line": "L1", "minutes": 360 } ] },
                    { "code": "Pancake", "flour": "SM", "tonnes": 20, "due": 700, "places": [ { "line": "L1", "minutes": 120 } ] },
                    { "code": "Household", "flour": "AP", "tonnes": 50, "due": 840, "places": [ { "line": "L1", "minutes": 300 } ] } ],
          "lines": [ { "code": "L1" } ], "allergens": { "SM": [ "soy" ] },
          "rules": [ { "after": "SM", "minutes": 240, "flushTonnes": 0.2, "flushTo": "waste", "isCleanDown": true }, { "minutes": 30 } ] }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<RunOrderSpec> Read(Stream stream) => SeasonCase.ReadAs<RunOrderSpec>(stream).Then(spec => HasHoles(spec)
        ? Parsing.Failed<RunOrderSpec>(Fault.AtPath("$", "null in a list", "something in its place"))
        : RunOrderFaults.Of(spec) is { Count: > 0 } faults ? Parsing.Failed<RunOrderSpec>([.. faults.Select(f => Fault.Told("$", f))]) : Parsing.Got(spec));

    private static bool HasHoles(RunOrderSpec spec) => spec.Runs.Any(r => r?.Places is null || r.Places.Any(p => p is null)) || spec.Lines.Any(l => l is null) || spec.Rules.Any(r => r is null)
        || spec.Bins.Any(b => b?.Inflows is null || b.Inflows.Any(i => i is null)) || spec.Crew.Any(s => s is null) || spec.Allergens.Values.Any(a => a is null || a.Any(n => n is null));
}
