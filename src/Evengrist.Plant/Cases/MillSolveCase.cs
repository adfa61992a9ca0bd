using System.Text.Json;
using Evengrist.Milling.Draws;
using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Sheet;
using Evengrist.Plant.Answers;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A mill posed in JSON: flow sheet, wheat, what was measured, and what is to be tried.</summary>
/// <param name="Sheet">The flow sheet as <c>milling sheet</c> reads it.</param>
/// <param name="Wheat">The wheat at first break.</param>
public sealed record MillSolveCase(JsonElement Sheet, PosedWheat Wheat)
{
    private FlowSheet? read;

    /// <summary>Moisture basis of ash and protein in what is measured and what is answered.</summary>
    public Basis Basis { get; init; } = Basis.At14;

    /// <summary>What was measured in this mill; nothing where it is not tuned.</summary>
    public IReadOnlyList<PosedMillTest> Tests { get; init; } = [];

    /// <summary>Settings to be tried on paper; null for none.</summary>
    public SheetChange? Try { get; init; }

    /// <summary>Wheat to be tried on paper; null for the same.</summary>
    public PosedWheat? TryWheat { get; init; }

    /// <summary>Streams to be taken together.</summary>
    public IReadOnlyList<ProductSet> Sets { get; init; } = [];

    /// <summary>Price of each product, money per tonne.</summary>
    public IReadOnlyDictionary<string, decimal>? PricePerTonne { get; init; }

    /// <summary>How many mills are drawn from what the tests leave open, each solved whole; null for none.</summary>
    public int? Samples { get; init; }

    /// <summary>Start of the draws: the same seed gives the same figures.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>What flour and feed bring, money per tonne, for what a drift costs; null for no money.</summary>
    public DriftPrices? Prices { get; init; }

    /// <summary>The wish for which moves are to be suggested; null for none.</summary>
    public PosedSuggest? Suggest { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "sheet": a flow sheet, as "milling sheet --help" shows it,
          "wheat": { "tonnesPerHour": to first break as it flows, "moisturePercent", "ashPercent", "proteinPercent", "basis": of these two, "fallingNumber"?: 350, "hardness"?: single-kernel index, 65, "thicknessMillimetres"?: 2.9, "branPercent"?: 15 },
          "basis"?: of ash and protein below and in the answer, "14mb",
          "tests"?: [ { "name", "at"?: when, as "2025-09-01T06:00:00Z", needed for drift, "set"?: settings then as in "try", "wheat"?: then, "streams"?: [ { "product", "yieldPercent", "ashPercent"?, "proteinPercent"? } ... ],
                        "releases"?: { passage: % }, "sieves"?: [ { "passage", "apertureMicrometres", "throughPercent" } ... ] } ... ],
          "try"?: { "gapMicrometres"?: { passage: µm }, "airMetresPerSecond"?: { purifier: m/s }, "cloths"?: [ { "passage", "fromMicrometres", "toMicrometres" } ... ],
                    "outlets"?: [ { "passage", "outlet": from 0, "to": [ spouts ] } ... ] }, "tryWheat"?: as wheat,
          "sets"?: [ { "name", "products": [ codes ] } ... ], "pricePerTonne"?: { product: money },
          "samples"?: mills drawn from what is not known and solved whole, 200 to 100000, for spreads and percentiles; none where left out, "seed"?: 1,
          "prices"?: { "flour": money per tonne, "feed" }, for what a drift costs,
          "suggest"?: { "wish": { "what": "Yield" | "Ash" | "Protein" | "DamagedStarch" | "MoneyPerDay" | "Load", "raise": true | false, "products"?: [ codes ], all flour where left out; of a load its passage, "by"?: as much as possible where left out },
                        "keep"?: [ { "what", "products"?, "leastChange"?, "mostChange"?: against now, or "least"?, "most"?: of itself } ... ], "sure"?: 0.9, the chance asked for, "sets"?: 3,
                        "rules"?: { "most"?: 3 moves, "gapStepMicrometres"?: 10, "mostGapPercent"?: 20, "mostSteps"?: 5, "leastGapMicrometres"?: 20, "mostGapMicrometres"?: 1500, "airStepMetresPerSecond"?: 0.05,
                                    "flowStepPercent"?: 0, "clothsOnHand"?: [ µm ], "mostClothPercent"?: 25, "mostLoadRisePercent"?: 10, "leave"?: [ passages ] } }, for milling suggest
        }
        """,
        """
        { "sheet": { "name": "One break", "firstBreak": "B1",
            "passages": [ { "code": "B1", "kind": "Break", "rolls": { "gapMicrometres": 500, "lengthMillimetres": 1000, "flutesPerCentimetre": 4, "disposition": "SharpToSharp", "differential": 2.5 },
                            "cloths": [ { "apertureMicrometres": 1000, "leaves": "Overs", "to": [ { "to": "bran" } ] }, { "apertureMicrometres": 132, "leaves": "Throughs", "to": [ { "to": "1B" } ] } ], "rest": [ { "to": "feed" } ] } ],
            "products": [ { "code": "1B", "kind": "Flour" }, { "code": "bran", "kind": "Bran" }, { "code": "feed", "kind": "Wheatfeed" } ] },
          "wheat": { "tonnesPerHour": 1, "moisturePercent": 16, "ashPercent": 1.7, "proteinPercent": 14, "basis": "dry" },
          "tests": [ { "name": "Monday", "releases": { "B1": 29.5 }, "streams": [ { "product": "1B", "yieldPercent": 2.2, "ashPercent": 0.5 } ] } ], "try": { "gapMicrometres": { "B1": 450 } }, "pricePerTonne": { "1B": 430, "bran": 190, "feed": 200 },
          "suggest": { "wish": { "what": "Yield", "raise": true, "by": 0.05 }, "keep": [ { "what": "Ash", "mostChange": 0.02 } ] } }
        """);

    /// <summary>The flow sheet as read.</summary>
    public FlowSheet FlowSheet => read ?? throw new InvalidOperationException("The case was not read through Read.");

    /// <summary>The tests.</summary>
    public IReadOnlyList<MillTest> MillTests => [.. Tests.Select(t => t.Of(FlowSheet, Wheat, Basis))];

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<MillSolveCase> Read(Stream stream) => SeasonCase.ReadAs<MillSolveCase>(stream).Then(posed =>
    {
        if (!FlowSheetJson.TryRead(posed.Sheet.GetRawText(), out var sheet, out var faults))
        {
            return Parsing.Failed<MillSolveCase>([.. faults.Select(f => Fault.Told("$.sheet", f))]);
        }

        posed.read = sheet;
        return posed.Faults(sheet) is { Count: > 0 } wrong ? Parsing.Failed<MillSolveCase>(wrong) : Parsing.Got(posed);
    });

    private List<Fault> Faults(FlowSheet sheet)
    {
        if (Tests.Any(t => t is null) || Sets.Any(s => s is null) || Suggest?.Keep.Any(k => k is null) == true)
        {
            return [Fault.AtPath("$", "null in a list", "something in its place")];
        }

        List<Fault> own = Own(sheet);
        return own.Count > 0 || Suggest is null ? own : [.. Suggest.Of(sheet, Wheat, MillTuning.None(sheet), Basis, PricePerTonne).Faults().Select(f => Fault.Told("$.suggest", f))];
    }

    private List<Fault> Own(FlowSheet sheet)
    {
        var products = sheet.Products.Select(p => p.Code).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. Wheat.Faults().Select(f => Fault.Told("$.wheat", f)), .. (TryWheat?.Faults() ?? []).Select(f => Fault.Told("$.tryWheat", f)), .. (Try?.Faults(sheet) ?? []).Select(f => Fault.Told("$.try", f)),
            .. Basis.IsStated ? Array.Empty<Fault>() : [Fault.Told("$.basis", "Ash and protein need a moisture basis: dry, 14mb or another.")],
            .. Tests.SelectMany((t, i) => t.Faults(sheet, Wheat, Basis).Select(f => Fault.Told($"$.tests[{i}]", f))),
            .. Prices is { } prices && MillDriftAnswer.FaultOf(prices) is { } wrong ? [Fault.Told("$.prices", wrong)] : Array.Empty<Fault>(),
            .. Samples is { } samples && DrawsSpec.FaultOf(samples) is { } few ? [Fault.Told("$.samples", few)] : Array.Empty<Fault>(),
            .. Sets.Where(s => s.Products.Count == 0).Select(s => Fault.Told("$.sets", $"{s.Name} has no product: give it one or leave it out.")),
            .. Sets.SelectMany(s => s.Products).Concat(PricePerTonne?.Keys ?? []).Where(c => !products.Contains(c)).Distinct().Select(c => Fault.Told("$", $"There is no product {c} on the flow sheet.")),
        ];
    }
}
