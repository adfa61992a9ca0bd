using Evengrist.Intake.Carrying;
using Evengrist.Quantities;

namespace Evengrist.Plant.Cases;

/// <summary>A load posed in JSON with the route it goes through.</summary>
/// <param name="Load">Mass of the load.</param>
/// <param name="Spec">The route.</param>
/// <param name="Threshold">The share asked about, per cent.</param>
public sealed record CarryOverCase(Mass Load, CarryOverSpec Spec, double Threshold)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "load": { "t": number (or "kg") }
          "bootResidueKg": what stays in the boot of the site's leg, kg; left out: 120, as published, and the answer says that nothing was measured
          "thresholdPercent": the share asked about; 0.1 where left out
        }
        """,
        """{ "load": { "t": 26 }, "bootResidueKg": 60, "thresholdPercent": 0.1 }""");

    /// <summary>Reads a case.</summary>
    public static Parsed<CarryOverCase> Read(Stream stream) => JsonCase.Read<CarryOverCase>(stream, (root, _) => Of(root));

    private static CarryOverCase? Of(JsonNode root)
    {
        if (!root.IsObject("load", "bootResidueKg", "thresholdPercent"))
        {
            return null;
        }

        var load = root.Member("load") is { } node && node.IsObject("t", "kg") ? node.Mass() : null;
        var residue = root.Member("bootResidueKg", required: false)?.Number(0.1m, 10_000m);
        var threshold = root.Member("thresholdPercent", required: false)?.Number(0.000001m, 100m) ?? 0.1m;
        var spec = residue is { } kg ? new CarryOverSpec { BootResidue = (double)kg, IsMeasured = true } : new CarryOverSpec();
        return load is { } mass ? new CarryOverCase(mass, spec, (double)threshold) : null;
    }
}
