using System.Text.Json;

namespace Evengrist.Plant.Epcis;

/// <summary>The prefixes that a document's and an event's @context give to namespaces.</summary>
internal sealed class Prefixes
{
    private readonly Dictionary<string, string> byPrefix = new(StringComparer.Ordinal);

    private readonly Prefixes? outer;

    /// <param name="context">The @context; null where there is none.</param>
    /// <param name="outer">Those of the document round an event: an event's own come first.</param>
    public Prefixes(Part? context, Prefixes? outer = null)
    {
        this.outer = outer;
        if (context is { } given)
        {
            Take(given.Json);
        }
    }

    /// <summary>No prefix at all.</summary>
    public static Prefixes None { get; } = new(null);

    /// <summary>A member's name as the event hash writes it: the namespace in braces and the local name.</summary>
    public string Long(string name)
    {
        var colon = name.IndexOf(':', StringComparison.Ordinal);
        if (colon > 0 && Find(name[..colon]) is { } space)
        {
            return $"{{{space}}}{name[(colon + 1)..]}";
        }

        // A name written out in full: the namespace ends with its last slash, hash or colon.
        var end = name.LastIndexOfAny(['/', '#', ':']);
        return end > 0 && colon >= 0 ? $"{{{name[..(end + 1)]}}}{name[(end + 1)..]}" : name;
    }

    private string? Find(string prefix) => byPrefix.GetValueOrDefault(prefix) ?? outer?.Find(prefix);

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
