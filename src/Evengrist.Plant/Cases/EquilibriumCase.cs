using Evengrist.Bins.Storage;

namespace Evengrist.Plant.Cases;

/// <summary>A question to the equilibrium equations posed in JSON.</summary>
/// <param name="Table">The constants.</param>
/// <param name="Questions">One for each equation asked.</param>
public sealed record EquilibriumCase(EmcTable Table, IReadOnlyList<EquilibriumSpec> Questions)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
        {{EmcCase.Schema.Replace("the first there are constants for when left out", "all there are constants for when left out", StringComparison.Ordinal)}}
          "celsius":   temperature of grain and air, -20 to 60
          "humidityPercent": of the air, 1 to 99; or
          "moisturePercent": of the grain, wet basis, 1 to 59
        }
        """,
        """
        { "wheat": "soft", "celsius": 15, "humidityPercent": 65 }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<EquilibriumCase> Read(Stream stream) => JsonCase.Read<EquilibriumCase>(stream, (root, _) => Of(root));

    private static EquilibriumCase? Of(JsonNode root)
    {
        if (!root.IsObject("wheat", "equation", "constants", "celsius", "humidityPercent", "moisturePercent"))
        {
            return null;
        }

        var table = EmcCase.Table(root);
        var (wheat, form, celsius) = (EmcCase.Wheat(root, table), EmcCase.Form(root), EmcCase.Double(root, "celsius", -20, 60));
        if (root.Has("humidityPercent") == root.Has("moisturePercent"))
        {
            root.Fault("either humidityPercent or moisturePercent");
            return null;
        }

        var humidity = EmcCase.Double(root, "humidityPercent", 1, 99, required: false) / 100;
        var moisture = EmcCase.Double(root, "moisturePercent", 1, 59, required: false);
        if (table is null || wheat is null || form is null || celsius is null || (humidity ?? moisture) is null)
        {
            return null;
        }

        EmcForm[] forms = form == EmcForm.None ? [.. table.Constants.Where(c => c.Wheat.Equals(wheat, StringComparison.OrdinalIgnoreCase)).Select(c => c.Form)] : [form.Value];
        return new EquilibriumCase(table, [.. forms.Select(f => new EquilibriumSpec(wheat, f, celsius.Value) { Humidity = humidity, MoisturePercent = moisture })]);
    }
}
