using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A mix posed in JSON: bins, limits, gates. Shares and confidences in per cent.</summary>
/// <param name="Spec">What is wanted, without faults.</param>
public sealed record MixCase(MixSpec Spec)
{
    private const int Most = 200;
    private static readonly string[] Names = [.. Enum.GetValues<Property>().Where(p => p != Property.None).Select(NameOf)];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "currency", "rate": t/h, "hours": h
          "bins": [ { "code", "class", "cost": money per t, "yearValue": money per t, "moisture": per cent, "leastShare", "mostShare", "locked": per cent of the mix, "t": what can be drawn,
                      "values": { "protein": { "value", "basis": "12mb", "own": one standard uncertainty of the bin's own, "instrument", "instrumentUncertainty" }, "fallingNumber": 385 ... } } ... ]
          "limits": [ { "what": "protein", "least", "most", "basis", "confidence": per cent, "on": "wheat" | "flour" } ... ]
          "classes": [ { "class", "least", "most": per cent } ... ]
          "relations": [ { "what", "wheatBasis", "flourBasis", "intercept", "slope", "uncertainty", "fitted": true | false, "source" } ... ]   flour = intercept + slope × wheat
          "gates": { "stepPercent", "stepTonnesPerHour", "mostGates", "leastTonnesPerHour", "mostTonnesPerHour", "leastShare": per cent }
          "market": [ { "what", "most", "source", "blendDown": true | false } ... ]   limits on wheat as it lies
          "habit": { "B02": per cent ... }
        }
        all but bins may be left out
        """,
        """
        { "bins": [ { "code": "B02", "cost": 231, "values": { "protein": { "value": 12.1, "basis": "12mb" }, "fallingNumber": 382, "testWeight": 79.4 } },
                    { "code": "B05", "cost": 254, "values": { "protein": { "value": 13.9, "basis": "12mb" }, "fallingNumber": 418, "testWeight": 75.9 } },
                    { "code": "B11", "cost": 268, "values": { "protein": { "value": 14.6, "basis": "12mb" }, "fallingNumber": 396, "testWeight": 80.2 } } ],
          "limits": [ { "what": "protein", "least": 13.2, "basis": "12mb" }, { "what": "fallingNumber", "least": 320 }, { "what": "testWeight", "least": 77.5 } ],
          "gates": { "stepPercent": 1 } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<MixCase> Read(Stream stream) => JsonCase.Read<MixCase>(stream, (root, faults) =>
    {
        if (!root.IsObject("currency", "rate", "hours", "bins", "limits", "classes", "relations", "gates", "market", "habit"))
        {
            return null;
        }

        var spec = new MixSpec
        {
            Bins = [.. (root.Member("bins")?.Items(Most) ?? []).Select(BinOf).OfType<MixBin>()],
            Limits = [.. List(root, "limits").Select(LimitOf).OfType<MixLimit>()],
            Classes = [.. List(root, "classes").Select(ClassOf).OfType<ClassSpan>()],
            Relations = [.. List(root, "relations").Select(RelationOf).OfType<FlourRelation>()],
            Gates = root.Has("gates") ? GatesOf(root.Member("gates")!) : new GateRules(),
            RateTonnesPerHour = Number(root, "rate", 0.001m, 10_000m), Hours = Number(root, "hours", 0.001m, 10_000m),
            Market = [.. List(root, "market").Select(MarketOf).OfType<MarketLimit>()],
            Habit = root.Has("habit") ? root.Member("habit")!.Members().ToDictionary(m => m.Name, m => (double)(m.Value.Number(0m, 100m) ?? 0) / 100, StringComparer.Ordinal) : null,
            Currency = root.Text("currency", "USD"),
        };
        if (faults.Count == 0)
        {
            faults.AddRange(MixSpecCheck.Faults(spec).Select(f => Fault.Told("$", f)));
        }

        return new MixCase(spec);
    });

    private static IReadOnlyList<JsonNode> List(JsonNode node, string name) => node.Has(name) ? node.Member(name)!.Items(Most) : [];

    private static MixBin? BinOf(JsonNode node)
    {
        if (!node.IsObject("code", "class", "cost", "yearValue", "moisture", "leastShare", "mostShare", "locked", "t", "values") || node.Member("cost")?.Number(-1_000_000m, 1_000_000m) is not { } cost)
        {
            return null;
        }

        return new MixBin(node.Text("code"), node.Text("class", ""), (double)cost)
        {
            YearValuePerTonne = Number(node, "yearValue", -1_000_000m, 1_000_000m), MoisturePercent = Number(node, "moisture", 0m, 60m) ?? 12, Tonnes = Number(node, "t", 0m, 10_000_000m),
            LeastShare = (Number(node, "leastShare", 0m, 100m) ?? 0) / 100, MostShare = (Number(node, "mostShare", 0m, 100m) ?? 100) / 100, LockedShare = Number(node, "locked", 0m, 100m) / 100,
            Values = (node.Has("values") ? node.Member("values")!.Members() : []).Select(m => (What: PropertyOf(m.Name, m.Value), Value: ValueOf(m.Value))).Where(v => v is { What: not Property.None, Value: not null })
                .DistinctBy(v => v.What).ToDictionary(v => v.What, v => v.Value!),
        };
    }

    private static MixValue? ValueOf(JsonNode node)
    {
        if (node.IsNumber)
        {
            return new MixValue((double)(node.Number(-1000m, 1_000_000m) ?? 0));
        }

        return !node.IsObject("value", "basis", "own", "instrument", "instrumentUncertainty") || node.Member("value")?.Number(-1000m, 1_000_000m) is not { } value ? null
            : new MixValue((double)value, BasisOf(node, "basis"), Number(node, "own", 0m, 1_000_000m) ?? 0)
            {
                Instrument = node.Text("instrument", ""), InstrumentUncertainty = Number(node, "instrumentUncertainty", 0m, 1_000_000m) ?? 0,
            };
    }

    private static MixLimit? LimitOf(JsonNode node) => !node.IsObject("what", "least", "most", "basis", "confidence", "on") ? null
        : new MixLimit(PropertyOf(node))
        {
            Least = Number(node, "least", -1000m, 1_000_000m), Most = Number(node, "most", -1000m, 1_000_000m), Basis = BasisOf(node, "basis"), Confidence = Number(node, "confidence", 0m, 100m) / 100,
            On = OnOf(node),
        };

    private static LimitOn OnOf(JsonNode node)
    {
        var on = node.Text("on", "wheat");
        if (on is not ("wheat" or "flour"))
        {
            node.Member("on")!.Fault("\"wheat\" or \"flour\"");
        }

        return on == "flour" ? LimitOn.Flour : LimitOn.Wheat;
    }

    private static ClassSpan? ClassOf(JsonNode node) => !node.IsObject("class", "least", "most") ? null
        : new ClassSpan(node.Text("class"), (Number(node, "least", 0m, 100m) ?? 0) / 100, (Number(node, "most", 0m, 100m) ?? 100) / 100);

    private static FlourRelation? RelationOf(JsonNode node)
    {
        if (!node.IsObject("what", "wheatBasis", "flourBasis", "intercept", "slope", "uncertainty", "fitted", "source"))
        {
            return null;
        }

        var (intercept, slope) = (node.Member("intercept")?.Number(-100_000m, 100_000m), node.Member("slope")?.Number(-1000m, 1000m));
        return intercept is null || slope is null ? null : new FlourRelation(
            PropertyOf(node), BasisOf(node, "wheatBasis"), BasisOf(node, "flourBasis"), (double)intercept, (double)slope, Number(node, "uncertainty", 0m, 100_000m) ?? 0,
            node.Has("fitted") && node.Member("fitted")!.Raw == "true", node.Text("source", "as posed"));
    }

    private static GateRules GatesOf(JsonNode node)
    {
        node.IsObject("stepPercent", "stepTonnesPerHour", "mostGates", "leastTonnesPerHour", "mostTonnesPerHour", "leastShare");
        return new GateRules
        {
            StepPercent = Number(node, "stepPercent", 0.01m, 100m), StepTonnesPerHour = Number(node, "stepTonnesPerHour", 0.001m, 1000m), MostGates = node.Member("mostGates", required: false)?.Whole(1, Most),
            LeastTonnesPerHour = Number(node, "leastTonnesPerHour", 0m, 1000m), MostTonnesPerHour = Number(node, "mostTonnesPerHour", 0.001m, 1000m), LeastOpenShare = Number(node, "leastShare", 0m, 100m) / 100,
        };
    }

    private static MarketLimit? MarketOf(JsonNode node)
    {
        if (!node.IsObject("what", "most", "source", "blendDown") || node.Member("most")?.Number(0m, 1_000_000m) is not { } most)
        {
            return null;
        }

        var what = PropertyOf(node);
        return what == Property.None ? null : new MarketLimit(what, LimitStage.AsReceived, most, Readings.UnitsOf(what)[0], node.Text("source", "as posed"), SourceMark.House, node.Has("blendDown") && node.Member("blendDown")!.Raw == "true");
    }

    private static Property PropertyOf(JsonNode node) => node.Member("what") is { } what ? PropertyOf(what.Text(), what) : Property.None;

    private static Property PropertyOf(string name, JsonNode node)
    {
        if (Array.IndexOf(Names, name) >= 0)
        {
            return Enum.GetValues<Property>().First(p => p != Property.None && NameOf(p) == name);
        }

        node.Fault(Nearest.To(name, Names) is { } near ? $"a known property; the nearest to {name} is {near}" : $"a property such as protein, fallingNumber, testWeight, don; not {name}");
        return Property.None;
    }

    private static Basis BasisOf(JsonNode node, string name)
    {
        if (!node.Has(name))
        {
            return default;
        }

        if (!Basis.TryParse(node.Text(name), out var basis))
        {
            node.Member(name)!.Fault("a moisture basis such as \"12mb\" or \"dry\"");
        }

        return basis;
    }

    private static double? Number(JsonNode node, string name, decimal least, decimal most) => (double?)node.Member(name, required: false)?.Number(least, most);

    /// <summary>The name of a property in a case: <c>fallingNumber</c>.</summary>
    public static string NameOf(Property what) => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(what.ToString());
}
