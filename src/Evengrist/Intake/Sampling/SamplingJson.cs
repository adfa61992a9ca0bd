using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>Papers and particulars of sampling as JSON text and back; unknown and missing members are faults.</summary>
internal static class SamplingJson
{
    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly JsonSerializerOptions Indented = new(Options) { WriteIndented = true };

    public static string Write<T>(T value, bool indented = false) => JsonSerializer.Serialize(value, indented ? Indented : Options);

    public static (T? Read, string Fault) Read<T>(string json)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(json, Options) is { } read ? (read, "") : (null, "An object was expected; read null.");
        }
        catch (JsonException broken)
        {
            return (null, JsonFault.Words(broken, typeof(T)));
        }
    }
}
