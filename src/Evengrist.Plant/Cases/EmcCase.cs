using Evengrist.Bins.Storage;

namespace Evengrist.Plant.Cases;

/// <summary>The parts that cases about stored wheat have in common: the table of constants, the wheat, the equation.</summary>
internal static class EmcCase
{
    public const string Schema = """
          "wheat":     a wheat of the constants: "hard", "soft", "durum", "hard red spring"
          "equation":  "Henderson", "ChungPfost", "Oswin" or "Halsey"; the first there are constants for when left out
          "constants": a table of constants of your own: { "constants": [ { "wheat", "form", "a", "b", "c", "mark": "Unverified" | "Rough" | "Read", "source" } ... ], "classes": { "HW": "hard" ... } };
                       the program's own, most of them not verified, when left out
        """;

    public static EmcTable? Table(JsonNode root)
    {
        if (root.Member("constants", required: false) is not { } node)
        {
            return EmcTable.Start;
        }

        if (EmcJson.TryRead(node.Raw, out var table, out var faults))
        {
            return table;
        }

        foreach (var fault in faults)
        {
            node.Fault($"constants that can be. {fault}");
        }

        return null;
    }

    public static string? Wheat(JsonNode root, EmcTable? table)
    {
        var wheat = root.Text("wheat");
        if (wheat.Length > 0 && table is not null && !table.Wheats.Contains(wheat, StringComparer.OrdinalIgnoreCase))
        {
            root.Member("wheat")!.Fault($"a wheat there are constants for: {string.Join(", ", table.Wheats)}");
            return null;
        }

        return wheat.Length > 0 ? wheat : null;
    }

    public static EmcForm? Form(JsonNode root)
    {
        if (root.Member("equation", required: false) is not { } node)
        {
            return EmcForm.None;
        }

        var form = EmcWords.All.FirstOrDefault(f => f.ToString() == node.Text());
        if (form == EmcForm.None)
        {
            node.Fault($"an equation: {string.Join(", ", EmcWords.All)}");
            return null;
        }

        return form;
    }

    /// <summary>A number as a model takes it, in a range.</summary>
    public static double? Double(JsonNode node, string name, decimal least, decimal most, bool required = true) => (double?)node.Member(name, required)?.Number(least, most);
}
