using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Evengrist.Milling.Sheet;

/// <summary>Says beside a place in the text, as passages[3], which passage or product that is.</summary>
internal static partial class PassagePlace
{
    public static string Named(string fault, string json)
    {
        if (Place().Match(fault) is not { Success: true } place)
        {
            return fault;
        }

        try
        {
            var list = JsonNode.Parse(json)?[place.Groups[1].Value] as JsonArray;
            return list?.ElementAtOrDefault(int.Parse(place.Groups[2].Value, CultureInfo.InvariantCulture)) is JsonObject one && one["code"]?.GetValueKind() is JsonValueKind.String ? $"{one["code"]}, {fault}" : fault;
        }
        catch (Exception unread) when (unread is JsonException or ArgumentException or InvalidOperationException)
        {
            return fault;
        }
    }

    [GeneratedRegex(@"^(passages|products)\[(\d{1,4})\]", RegexOptions.CultureInvariant)]
    private static partial Regex Place();
}
