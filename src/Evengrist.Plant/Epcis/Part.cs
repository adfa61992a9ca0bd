using System.Text.Json;

namespace Evengrist.Plant.Epcis;

/// <summary>A value of a document with its place in it.</summary>
internal readonly record struct Part(JsonElement Json, PathTo Path)
{
    public bool IsText => Json.ValueKind == JsonValueKind.String;

    /// <summary>The text; empty where it is none.</summary>
    public string Text => IsText ? Json.GetString()! : "";

    /// <summary>A member of an object; null where it is not there.</summary>
    public Part? Member(string name) => Json.ValueKind == JsonValueKind.Object && Json.TryGetProperty(name, out var value) ? new Part(value, Path.Member(name)) : null;

    public bool Has(string name) => Json.ValueKind == JsonValueKind.Object && Json.TryGetProperty(name, out _);

    /// <summary>The items of a list; none where it is no list.</summary>
    public IEnumerable<Part> Items()
    {
        if (Json.ValueKind != JsonValueKind.Array)
        {
            yield break;
        }

        var index = 0;
        foreach (var item in Json.EnumerateArray())
        {
            yield return new Part(item, Path.Item(index++));
        }
    }

    /// <summary>The items of a member that is a list.</summary>
    public IEnumerable<Part> Items(string member) => Member(member) is { } list ? list.Items() : [];

    /// <summary>Whether a member is a list with at least so many items.</summary>
    public bool HasItems(string member, int least = 1) => Member(member) is { Json.ValueKind: JsonValueKind.Array } list && list.Json.GetArrayLength() >= least;

    public Fault Wrong(string expected) => Fault.AtPath(Path.ToString(), Json.ValueKind is JsonValueKind.String ? Json.GetString()! : Json.GetRawText(), expected);

    public Fault Told(string sentence) => Fault.Told(Path.ToString(), sentence);
}
