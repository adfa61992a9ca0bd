using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Evengrist.Plant.Epcis;

/// <summary>A document that holds against the rules.</summary>
/// <param name="Json">All of it.</param>
/// <param name="Events">Its events, in its order.</param>
/// <param name="Asked">What may be meant but is worth a question.</param>
public sealed record EpcisDocument(JsonElement Json, IReadOnlyList<EpcisEvent> Events, IReadOnlyList<Fault> Asked)
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Each event by its hash, as JSON that stands by itself: with the prefixes of the document.</summary>
    public IReadOnlyList<(string Hash, string Json)> Alone() => [.. Events.Select(e => (e.Hash, ByItself(e)))];

    /// <summary>Hash of the document as it came, byte for byte of what it says.</summary>
    public string Fingerprint() => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Json.GetRawText())));

    internal static EpcisDocument Of(Part root, IReadOnlyList<Part> events, IReadOnlyList<Fault> asked)
    {
        var prefixes = new Prefixes(root.Member("@context"));
        return new(root.Json, [.. events.Select(e => EpcisEvent.Of(e, prefixes))], asked);
    }

    private string ByItself(EpcisEvent told)
    {
        var json = JsonObject.Create(told.Json)!;
        if (new Part(Json, PathTo.Root).Member("@context") is { } context)
        {
            json["@context"] = JsonSerializer.SerializeToNode(told.Json.TryGetProperty("@context", out var own) ? Items(context.Json).Concat(Items(own)).DistinctBy(c => c.GetRawText()) : Items(context.Json));
        }

        return json.ToJsonString(Plain);
    }

    private static JsonElement[] Items(JsonElement context) => context.ValueKind == JsonValueKind.Array ? [.. context.EnumerateArray()] : [context];
}
