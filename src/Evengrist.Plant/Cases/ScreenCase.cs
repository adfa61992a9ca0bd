using Evengrist.Intake.Sampling;

namespace Evengrist.Plant.Cases;

/// <summary>A composite of several loads posed in JSON.</summary>
/// <param name="Spec">The composite.</param>
public sealed record ScreenCase(ScreenSpec Spec)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "limit": mg/kg that no load may exceed, "composite": mg/kg found (left out before it is tested),
          "trucks": [ { "code": text, "t": number (or "kg"), "found": mg/kg of its own test, "chanceOver": 0 to 1 } ... ]    (the last two may be left out)
          "prior": { "mean": mg/kg, "sd": mg/kg }          (for the tests to expect; may be left out)
        }
        """,
        """
        { "limit": 1.0, "composite": 0.21, "prior": { "mean": 0.15, "sd": 0.12 },
          "trucks": [ { "code": "25-0709-011", "t": 26 }, { "code": "25-0709-012", "t": 26 }, { "code": "25-0709-013", "t": 26 } ] }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<ScreenCase> Read(Stream stream) => JsonCase.Read<ScreenCase>(stream, (root, _) => Of(root));

    private static ScreenCase? Of(JsonNode root)
    {
        if (!root.IsObject("limit", "composite", "trucks", "prior"))
        {
            return null;
        }

        var limit = root.Member("limit")?.Number(0.0001m, 1000m);
        decimal? composite = root.Has("composite") ? root.Member("composite")!.Number(0m, 1000m) : null;
        var trucks = (root.Member("trucks")?.Items(100) ?? []).Select(TruckOf).OfType<ScreenTruck>().ToArray();
        if (limit is not { } most || !root.Has("trucks"))
        {
            return null;
        }

        var spec = new ScreenSpec(most, composite, trucks) { Prior = root.Prior("prior", PriorScale.Lognormal) };
        return root.Sound(spec.Faults()) ? new ScreenCase(spec) : null;
    }

    private static ScreenTruck? TruckOf(JsonNode node)
    {
        if (!node.IsObject("code", "t", "kg", "found", "chanceOver"))
        {
            return null;
        }

        var (code, mass) = (node.Text("code"), node.Mass());
        var found = node.Has("found") ? node.Member("found")!.Number(0m, 1000m) : null;
        double? chance = node.Has("chanceOver") ? node.Number("chanceOver", 0, 0, 1) : null;
        return mass is { } m ? new ScreenTruck(code, m, found, chance) : null;
    }
}
