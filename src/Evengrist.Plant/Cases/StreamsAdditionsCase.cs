using Evengrist.Streams.Additions;

namespace Evengrist.Plant.Cases;

/// <summary>Additions posed in JSON, with enrichment tables of one's own or the program's.</summary>
/// <param name="Ask">What is asked.</param>
public sealed record StreamsAdditionsCase(AdditionsSpec Ask)
{
    /// <summary>The enrichment tables.</summary>
    public EnrichmentTables Tables { get; init; } = EnrichmentTables.Start;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "ask": {
            "flourTonnesPerHour"?,
            "malt"?: { "trials": [ { "gramsPer100Kg", "fallingNumberSeconds" } ... two or more ], "wantedSeconds", "uncertaintyShare"?: 0.05 },
            "gluten"?: { "basePercent", "wantedPercent", "glutenPercent" }   protein, all on one basis,
            "ascorbic"?: { "ppm", "contentPercent": of the premix },
            "enrichment"?: { "market", "contentPercent": { nutrient: per cent of the premix ... }, "own"?: { nutrient: mg/kg ... }, "overagePercent"?, "day"?: date },
            "feeder"?: { "fromKilograms", "untilKilograms", "flourTonnes", "filledKilograms"?, "setGramsPerTonne"?, "scaleUncertainty"?: kg, "flourUncertaintyShare"? },
            "stoodMinutes"?: a feeder stood while flour ran,
            "ash"?: { "ashPercent": as read after, "gramsPerTonne", "additionAshPercent" },
            "rework"?: { "into", "of", "percent", "mostPercent"?: 5, "ageDays"?, "mostDays"?: 30, "allergens"?: [ ], "labelAllergens"?: [ ], "isEnriched"?, "values"?: [ { "what", "ofRun", "ofRework", "least"?, "most"? } ... ] }
          },
          "tables"?: { "tables": [ { "market", "from": date, "nutrients": [ { "name", "milligramsPerKg" } ... ], "mark": "Read" | "Memory" | "House", "source" } ... ] }
        }
        """,
        """
        { "ask": { "flourTonnesPerHour": 12.075,
            "malt": { "trials": [ { "gramsPer100Kg": 0, "fallingNumberSeconds": 410 }, { "gramsPer100Kg": 20, "fallingNumberSeconds": 300 } ], "wantedSeconds": 250 },
            "gluten": { "basePercent": 11, "wantedPercent": 12.5, "glutenPercent": 77 }, "stoodMinutes": 25 } }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<StreamsAdditionsCase> Read(Stream stream) => SeasonCase.ReadAs<StreamsAdditionsCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<StreamsAdditionsCase>(faults) : Parsing.Got(posed));

    private List<Fault> Faults()
    {
        if (Ask.Malt?.Trials.Any(t => t is null) == true || Ask.Rework?.Values.Any(v => v is null) == true || Tables.Tables.Any(t => t is null || t.Nutrients.Any(n => n is null)))
        {
            return [Fault.AtPath("$", "null in a list", "something in its place")];
        }

        return [.. Tables.Faults().Select(f => Fault.Told("$.tables", f)), .. AdditionsModel.Of(Ask, Tables).Faults.Select(f => Fault.Told("$.ask", f))];
    }
}
