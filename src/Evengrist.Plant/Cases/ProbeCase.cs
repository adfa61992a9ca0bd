using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>A vehicle posed in JSON that is to be sampled.</summary>
/// <param name="Spec">The vehicle and the rule.</param>
/// <param name="Spread">What the site measured of the spread; null where it is not asked how far the result may be off.</param>
/// <param name="HalfWidth">The half-width wanted of the error between probes; null where it is not asked.</param>
public sealed record ProbeCase(ProbeSpec Spec, VarianceSpec? Spread, double? HalfWidth)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "rule": {{string.Join(" | ", ProbePatterns.All.Select(p => $"\"{p.Code}\""))}},
          "vehicle": "flatBottom" | "hopperBottom", "load": { "t": number (or "kg") }, "depthM": metres of grain,
          "lengthM": 10, "widthM": 2.4, "hoppers": 2, "seed": 0          (these may be left out)
          "spread": { "betweenProbes", "sample", "preparation", "determination", "instrument": standard deviations in one unit,
                      "halfWidth": wanted ± of the error between probes at 95 % }          (may be left out)
        }
        """,
        """
        { "rule": "us-hopper-bottom", "vehicle": "hopperBottom", "load": { "t": 26.34 }, "depthM": 1.8, "lengthM": 12.2, "hoppers": 2,
          "spread": { "betweenProbes": 0.4, "determination": 0.1, "instrument": 0.15, "halfWidth": 0.3 } }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<ProbeCase> Read(Stream stream) => JsonCase.Read<ProbeCase>(stream, (root, _) => Of(root));

    private static ProbeCase? Of(JsonNode root)
    {
        if (!root.IsObject("rule", "vehicle", "load", "depthM", "lengthM", "widthM", "hoppers", "seed", "spread"))
        {
            return null;
        }

        var rule = root.Member("rule") is { } code ? RuleOf(code) : null;
        var vehicle = root.Member("vehicle") is { } kind ? VehicleOf(kind) : VehicleKind.None;
        var load = root.Member("load") is { } mass && mass.IsObject("t", "kg") ? mass.Mass() : null;
        var depth = root.Member("depthM")?.Number(0.01m, 6m);
        var (spread, halfWidth) = SpreadOf(root);
        if (rule is null || load is null || depth is null || vehicle == VehicleKind.None)
        {
            return null;
        }

        var spec = new ProbeSpec(rule, vehicle, load.Value, (double)depth.Value)
        {
            LengthMetres = root.Number("lengthM", 10, 1, 30), WidthMetres = root.Number("widthM", 2.4, 1, 5), Hoppers = root.Whole("hoppers", 2, 1, 6), Seed = root.Whole("seed", 0, 0, int.MaxValue),
        };
        return root.Sound(spec.Faults()) ? new ProbeCase(spec, spread, halfWidth) : null;
    }

    private static ProbePattern? RuleOf(JsonNode node)
    {
        var rule = ProbePatterns.Find(node.Text());
        if (rule is null)
        {
            node.Fault($"one of {string.Join(", ", ProbePatterns.All.Select(p => p.Code))}");
        }

        return rule;
    }

    private static VehicleKind VehicleOf(JsonNode node)
    {
        var kind = node.Text() switch { "flatBottom" => VehicleKind.FlatBottom, "hopperBottom" => VehicleKind.HopperBottom, _ => VehicleKind.None };
        if (kind == VehicleKind.None)
        {
            node.Fault("flatBottom or hopperBottom");
        }

        return kind;
    }

    private static (VarianceSpec? Spread, double? HalfWidth) SpreadOf(JsonNode root)
    {
        if (!root.Has("spread") || root.Member("spread") is not { } node || !node.IsObject("betweenProbes", "sample", "preparation", "determination", "instrument", "halfWidth"))
        {
            return (null, null);
        }

        double Sd(string name) => node.Number(name, 0, 0, 1_000_000);
        return (new VarianceSpec(Sd("betweenProbes"), Sd("sample"), Sd("preparation"), Sd("determination"), Sd("instrument")), node.Has("halfWidth") ? node.Number("halfWidth", 1, 0.000001, 1_000_000) : null);
    }
}
