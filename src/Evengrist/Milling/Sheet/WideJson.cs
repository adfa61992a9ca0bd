using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Evengrist.Milling.Sheet;

/// <summary>JSON laid out for a reader: what fits on a line stands on one, so that a cloth is a line and a passage a paragraph.</summary>
internal static class WideJson
{
    private const int Width = 190;
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(JsonNode node)
    {
        var text = new StringBuilder();
        Lay(node, 0, "", text);
        return text.Append('\n').ToString();
    }

    private static void Lay(JsonNode? node, int indent, string before, StringBuilder text)
    {
        var line = OneLine(node);
        if (indent + before.Length + line.Length <= Width || node is not (JsonObject or JsonArray))
        {
            text.Append(before).Append(line);
            return;
        }

        var (open, close) = node is JsonObject ? ('{', '}') : ('[', ']');
        var parts = node is JsonObject members ? members.Select(m => ($"\"{m.Key}\": ", m.Value)) : node.AsArray().Select(n => ("", n));
        text.Append(before).Append(open);
        var first = true;
        foreach (var (name, value) in parts)
        {
            text.Append(first ? "\n" : ",\n").Append(' ', indent + 2);
            Lay(value, indent + 2, name, text);
            first = false;
        }

        text.Append('\n').Append(' ', indent).Append(close);
    }

    private static string OneLine(JsonNode? node) => node switch
    {
        null => "null",
        JsonObject { Count: > 0 } members => $"{{ {string.Join(", ", members.Select(m => $"\"{m.Key}\": {OneLine(m.Value)}"))} }}",
        JsonArray list => $"[{string.Join(", ", list.Select(OneLine))}]",
        _ => node.ToJsonString(Plain),
    };
}
