using System.Text.Json;
using Evengrist.Ledger;

namespace Evengrist.Intake;

/// <summary>Reads the particulars of a happening without ever failing: what is no JSON object, or lacks a field, says nothing.</summary>
internal static class ParticularsJson
{
    public static JsonElement? Read(Happening happening)
    {
        if (happening.Particulars.Length == 0)
        {
            return null;
        }

        try
        {
            using var document = JsonDocument.Parse(happening.Particulars);
            return document.RootElement.ValueKind == JsonValueKind.Object ? document.RootElement.Clone() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    public static string Text(JsonElement said, string field) => said.TryGetProperty(field, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : "";

    public static IReadOnlyList<string> Texts(JsonElement said, string field) => said.TryGetProperty(field, out var values) && values.ValueKind == JsonValueKind.Array
        ? [.. values.EnumerateArray().Where(v => v.ValueKind == JsonValueKind.String).Select(v => v.GetString()!)]
        : [];
}
