using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>A test posed in JSON: is it worth its wait?</summary>
/// <param name="Spec">The question.</param>
/// <param name="Prior">Where the prior comes from, in words.</param>
/// <param name="AcceptAt">For DON: a level of acceptance to judge; null where none is asked.</param>
/// <param name="TooFew">Why there is no prior; null where there is one.</param>
public sealed record TestCase(TestSpec Spec, string Prior, double? AcceptAt, TooFewLoads? TooFew)
{
    private static readonly string[] Money = ["wrongBinPerTonne", "claim", "divertedGoodPerTonne", "discountPerTonne", "costPerMinute", "ownCost", "minutes"];

    // What a wrong bin costs; without any of it no test could ever be worth its wait.
    private static readonly string[] Losses = ["wrongBinPerTonne", "claim", "discountPerTonne"];

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "test": "fallingNumber" | "don", "limit": seconds | mg/kg, "load": { "t": number },
          "prior": { "mean": of 6000/(FN - 50) | of mg/kg, "sd": likewise }  or  "history": [ { "value": s | mg/kg, "sd": number } ... ]
          "wrongBinPerTonne", "claim", "discountPerTonne": money, at least one of them; "divertedGoodPerTonne": money, 0 where left out
          "minutes", "costPerMinute", "trucksWaiting" (this one included; 1 where left out), "ownCost" (0 where left out)
          "relativeError": 0.05 (falling number), "sizes": { "sampleKg": 0.454, "portionG": 25, "determinations": 1 } (don)
          "acceptAt": a level whose risks are told (don; may be left out)
        }
        """,
        """
        { "test": "fallingNumber", "limit": 300, "load": { "t": 26 }, "prior": { "mean": 26, "sd": 6 }, "wrongBinPerTonne": 12, "divertedGoodPerTonne": 6,
          "minutes": 8, "costPerMinute": 1.33, "trucksWaiting": 2, "ownCost": 4, "relativeError": 0.05 }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<TestCase> Read(Stream stream) => JsonCase.Read<TestCase>(stream, (root, _) => Of(root));

    private static TestCase? Of(JsonNode root)
    {
        if (!root.IsObject(["test", "limit", "load", "prior", "history", .. Money, "trucksWaiting", "relativeError", "sizes", "acceptAt"]))
        {
            return null;
        }

        var scale = root.Text("test") switch { "fallingNumber" => PriorScale.Liquefaction, "don" => PriorScale.Lognormal, _ => PriorScale.None };
        if (scale == PriorScale.None)
        {
            root.Member("test", required: false)?.Fault("fallingNumber or don");
        }

        var limit = root.Member("limit")?.Number(0.001m, 1000m);
        var load = root.Member("load") is { } mass && mass.IsObject("t", "kg") ? mass.Mass() : null;
        if (root.Has("prior") == root.Has("history"))
        {
            root.Fault("one of prior and history");
        }

        var stated = root.Prior("prior", scale);
        var history = stated is null && root.Has("history") && scale != PriorScale.None ? History(root.Member("history")!, scale) : null;
        if (!Losses.Any(root.Has))
        {
            root.Fault($"at least one of {string.Join(", ", Losses)}: what a load beyond the limit costs in the good bin");
        }

        string[] queue = ["minutes", "costPerMinute"];
        var wait = queue.Select(m => root.Member(m)).ToArray();
        var costs = Money.Select(m => root.Number(m, 0, 0, 1_000_000)).ToArray();
        if (limit is null || load is null || (stated is null && history is null) || !Losses.Any(root.Has) || wait.Contains(null))
        {
            return null;
        }

        var few = history as TooFewLoads;
        var spec = new TestSpec(stated ?? (history as PriorFound)?.Prior ?? new LoadPrior(scale, 1, 1), (double)limit.Value, (double)load.Value.Tonnes)
        {
            WrongBinPerTonne = costs[0], Claim = costs[1], DivertedGoodPerTonne = costs[2], DiscountPerTonne = costs[3], CostPerMinute = costs[4], OwnCost = costs[5], Minutes = costs[6],
            TrucksWaiting = root.Whole("trucksWaiting", 1, 1, 10_000), RelativeError = root.Number("relativeError", 0.05, 0.0001, 1), Sizes = root.Sizes(),
        };
        double? acceptAt = scale == PriorScale.Lognormal && root.Has("acceptAt") ? root.Number("acceptAt", 1, 0.001, 1000) : null;
        return root.Sound(spec.Faults()) ? new TestCase(spec, history is PriorFound f ? $"from {f.Prior.Loads} earlier loads" : "as stated", acceptAt, few) : null;
    }

    private static PriorOutcome History(JsonNode list, PriorScale scale)
    {
        var (least, most) = scale == PriorScale.Liquefaction ? (60m, 1000m) : (0m, 1000m);
        var readings = list.Items(10_000).Where(i => i.IsObject("value", "sd"))
            .Select(i => (Value: i.Member("value")?.Number(least, most), Sd: i.Has("sd") ? i.Member("sd")!.Number(0m, 1000m) ?? 0m : 0m))
            .Where(r => r.Value is not null).Select(r => (r.Value!.Value, r.Sd)).ToArray();
        return scale == PriorScale.Liquefaction ? PriorModel.FromFallingNumbers(readings) : PriorModel.FromConcentrations(readings);
    }
}
