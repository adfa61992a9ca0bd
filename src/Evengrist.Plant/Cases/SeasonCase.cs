using System.Text.Json;
using Evengrist.Quantities;
using Evengrist.Season;

namespace Evengrist.Plant.Cases;

/// <summary>A crop year posed in JSON, to be planned.</summary>
/// <param name="Season">What the plan is made from.</param>
public sealed record SeasonCase(SeasonSpec Season)
{
    private const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Whether most gates, least shares and campaigns are to be kept; the linear plan otherwise.</summary>
    public bool Millable { get; init; } = true;

    /// <summary>Where the plan that can be milled may stop, (cost − bound)/cost, per cent.</summary>
    public double GapPercent { get; init; } = 0.3;

    /// <summary>Longest time for the plan that can be milled, seconds.</summary>
    public double Seconds { get; init; } = 10;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "season": {
            "periods": [ { "start": date, "days": number } ... one after the other ],
            "units":   [ { "code", "tonnesPerHour", "hours": [ one for each period ], "leastCampaignHours"? } ... ],
            "wheats":  [ { "code", "wheatClass", "openingTonnes", "moisturePercent", "quality": { "Protein": { "value", "spread"?, "basis": "12mb" } ... },
                           "home"?, "layers"?, "deliveries"?: [ { "period", "tonnes" ... } ], "extractionPoints"?, "yieldOf"?, "endValuePerTonne"? } ... ],
            "flours":  [ { "code", "unit", "demand": [ one for each period ], "yield", "unmetPricePerTonne", "limits"?: [ { "what", "least"?, "most"?, "missPrice",
                           "basis"?, "relief"?: [ { "by", "costPerTonne" } ] } ], "classes"?, "wheats"?, "leastShare"?, "mostGates"?, "stockMost"?, "byProductPerTonne"? ... } ... ],
            "currency": "USD", "homes"?: [ { "code", "capacityTonnes" } ], "offers"?: [ { "wheat", "tiers": [ { "tonnesPerPeriod": number or "Infinity", "pricePerTonne" } ],
                           "first", "last", "totalTonnes"? } ], "carryOut"?: [ { "wheatClass", "leastTonnes" } ], "storagePerTonneWeek"?,
            "choices"?: [ { "kind": "use" | "buy" | "share", "wheat" or "offer", "flour", "period", "least", "most" } ]
          },
          "millable"?: true | false, "gapPercent"?: 0.3, "seconds"?: 10
        }
        Periods are numbered from 0; tonnes of wheat as it lies, of flour as sold.
        """,
        """
        { "season": { "currency": "USD",
            "periods": [ { "start": "2025-09-15", "days": 7 }, { "start": "2025-09-22", "days": 7 } ],
            "units": [ { "code": "A", "tonnesPerHour": 10, "hours": [ 20, 20 ] } ],
            "wheats": [ { "code": "B11", "wheatClass": "HS", "openingTonnes": 60, "moisturePercent": 12, "quality": { "Protein": { "value": 14.6, "basis": "12mb" } } },
                        { "code": "B02", "wheatClass": "HW", "openingTonnes": 300, "moisturePercent": 12, "quality": { "Protein": { "value": 12.1, "basis": "12mb" } } } ],
            "flours": [ { "code": "WB", "unit": "A", "demand": [ 75, 75 ], "yield": 0.75, "unmetPricePerTonne": 900,
                          "limits": [ { "what": "Protein", "least": 13.2, "missPrice": 400, "basis": "12mb" } ] } ] } }
        """);

    /// <summary>Reads a case; what is wrong with the season is a fault too.</summary>
    public static Parsed<SeasonCase> Read(Stream stream) => ReadAs<SeasonCase>(stream).Then(c => c switch
    {
        { GapPercent: not (>= 0 and < 100) } => Parsing.Failed<SeasonCase>(Fault.AtPath("$.gapPercent", $"{c.GapPercent}", "a share of the cost in per cent, 0 or more")),
        { Seconds: not (> 0 and <= 3600) } => Parsing.Failed<SeasonCase>(Fault.AtPath("$.seconds", $"{c.Seconds}", "seconds above 0 and at most 3600")),
        _ => Sound(c, c.Season),
    });

    internal static Parsed<T> Sound<T>(T posed, SeasonSpec season)
        where T : class => season.Faults() is { Count: > 0 } faults
            ? Parsing.Failed<T>([.. faults.Select(f => Fault.Told($"$.season, {f.Where}", f.What))])
            : Parsing.Got(posed);

    internal static Parsed<T> ReadAs<T>(Stream stream)
        where T : class
    {
        if (PosedBytes.Of(stream, MostBytes) is not { } bytes)
        {
            return Parsing.Failed<T>(Fault.OfFile("a larger case", "at most 4 MiB"));
        }

        try
        {
            return JsonSerializer.Deserialize<T>(bytes.Span, SeasonJson.Options) is { } read ? Parsing.Got(read) : Parsing.Failed<T>(Fault.OfFile("null", "a JSON object"));
        }
        catch (JsonException broken)
        {
            return Parsing.Failed<T>(Fault.Told("", JsonFault.Words(broken)));
        }
        catch (NotSupportedException broken)
        {
            return Parsing.Failed<T>(Fault.OfFile("a choice without its kind", broken.Message));
        }
    }
}
