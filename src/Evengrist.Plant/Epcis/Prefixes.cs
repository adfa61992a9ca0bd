using System.Text.Json;

namespace Evengrist.Plant.Epcis;

/// <summary>The prefixes that a document's and an event's @context give to namespaces.</summary>
internal sealed class Prefixes
{
    private readonly Dictionary<string, string> byPrefix = new(StringComparer.Ordinal);

    public Prefixes(params ReadOnlySpan<Part?> contexts)
    {
        foreach (var context in contexts)
        {
            if (context is { } given)
            {
                Take(given.Json);
            }
        }
    }

    /// <summary>A member's name as the event hash writes it: the namespace in braces and the local name.</summary>
    public string Long(string name)
    {
        var colon = name.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && byPrefix.TryGetValue(name[..colon], out var space))
        {
            return $"{{{space}}}{name[(colon + 1)..]}";
        }

        // A name written out in full: the namespace ends with its last slash, hash or colon.
        var end = name.LastIndexOfAny(['/', '#', ':']);
        return end > 0 && colon >= 0 ? $"{{{name[..(end + 1)]}}}{name[(end + 1)..]}" : name;
    }

    private void Take(JsonElement context)
    {
        if (context.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in context.EnumerateArray())
            {
                Take(item);
            }
        }
        else if (context.ValueKind == JsonValueKind.Object)
        {
            foreach (var prefix in context.EnumerateObject().Where(p => p.Value.ValueKind == JsonValueKind.String))
            {
                byPrefix[prefix.Name] = prefix.Value.GetString()!;
            }
        }
    }
}
