using Evengrist.Bins.Storage;

namespace Evengrist.Plant.Cases;

/// <summary>Grain and airs posed in JSON.</summary>
/// <param name="Spec">The grain.</param>
/// <param name="Airs">The airs.</param>
public sealed record AerationCase(AerationSpec Spec, IReadOnlyList<OutsideAir> Airs)
{
    private const int MostAirs = 9000;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
        {{EmcCase.Schema}}
          "grain":    { "celsius": -20 to 50, "moisturePercent": 6 to 30, wet basis }
          "airflow":  { "m3PerMinTonne": number } or { "cfmPerBushel": number }
          "airs":     [ { "celsius": -20 to 50, "humidityPercent": 1 to 99 } ... ]   the air outside, for example one an hour of a day
          "depthMetres": number (no pressure without it), "bulkDensity": kg/m3, 785 when left out,
          "packedFactor": 1.3 when left out, "fanHoursPerDay": 24 when left out
        }
        """,
        """
        { "wheat": "hard", "grain": { "celsius": 25, "moisturePercent": 13 }, "airflow": { "cfmPerBushel": 0.1 },
          "airs": [ { "celsius": 12, "humidityPercent": 70 } ], "depthMetres": 20 }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<AerationCase> Read(Stream stream) => JsonCase.Read<AerationCase>(stream, (root, _) => Of(root));

    private static AerationCase? Of(JsonNode root)
    {
        if (!root.IsObject("wheat", "equation", "constants", "grain", "airflow", "airs", "depthMetres", "bulkDensity", "packedFactor", "fanHoursPerDay"))
        {
            return null;
        }

        var constants = Constants(root);
        var grain = root.Member("grain") is { } g && g.IsObject("celsius", "moisturePercent") ? g : null;
        var celsius = grain is null ? null : EmcCase.Double(grain, "celsius", -20, 50);
        var moisture = grain is null ? null : EmcCase.Double(grain, "moisturePercent", 6, 30);
        var airflow = Airflow(root);
        OutsideAir?[] airs = [.. (root.Member("airs")?.Items(MostAirs) ?? []).Select(AirOf)];
        var depth = EmcCase.Double(root, "depthMetres", 0.1m, 60, required: false);
        var density = EmcCase.Double(root, "bulkDensity", 500, 1000, required: false);
        var packed = EmcCase.Double(root, "packedFactor", 1, 3, required: false);
        var hours = EmcCase.Double(root, "fanHoursPerDay", 0.1m, 24, required: false);
        return constants is null || celsius is null || moisture is null || airflow is null || airs.Contains(null) ? null
            : new AerationCase(
                new AerationSpec(constants, celsius.Value, moisture.Value, airflow.Value) { DepthMetres = depth, BulkDensity = density ?? 785, PackedFactor = packed ?? 1.3, FanHoursPerDay = hours ?? 24 },
                [.. airs.OfType<OutsideAir>()]);
    }

    private static EmcConstants? Constants(JsonNode root)
    {
        var table = EmcCase.Table(root);
        if (EmcCase.Wheat(root, table) is not { } wheat || EmcCase.Form(root) is not { } form || table is null)
        {
            return null;
        }

        var constants = form == EmcForm.None ? table.Constants.First(c => c.Wheat.Equals(wheat, StringComparison.OrdinalIgnoreCase)) : table.Find(wheat, form);
        if (constants is null)
        {
            root.Member("equation")!.Fault($"an equation there are constants of for {wheat} wheat; none are made up");
        }

        return constants;
    }

    private static double? Airflow(JsonNode root)
    {
        if (root.Member("airflow") is not { } node || !node.IsObject("m3PerMinTonne", "cfmPerBushel"))
        {
            return null;
        }

        if (node.Has("m3PerMinTonne") == node.Has("cfmPerBushel"))
        {
            node.Fault("one of m3PerMinTonne and cfmPerBushel");
            return null;
        }

        return EmcCase.Double(node, "m3PerMinTonne", 0.001m, 10, required: false) ?? (EmcCase.Double(node, "cfmPerBushel", 0.001m, 9, required: false) * AerationSpec.PerCfmPerBushel);
    }

    private static OutsideAir? AirOf(JsonNode node) => node.IsObject("celsius", "humidityPercent")
        && EmcCase.Double(node, "celsius", -20, 50) is { } celsius && EmcCase.Double(node, "humidityPercent", 1, 99) is { } humidity ? new OutsideAir(celsius, humidity / 100) : null;
}
