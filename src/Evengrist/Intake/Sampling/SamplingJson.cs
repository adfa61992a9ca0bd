using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Intake.Sampling;

/// <summary>Papers and particulars of sampling as JSON text and back; unknown and missing members are faults.</summary>
internal static class SamplingJson
{
    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.Strict,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        IgnoreReadOnlyProperties = true,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false), new BasisJson() },
    };

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

    private sealed class BasisJson : JsonConverter<Basis>
    {
        private const string None = "none";

        public override Basis Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
            return text == None ? default
                : Basis.TryParse(text, out var basis) ? basis
                : throw new JsonException("A basis is dry, 12mb, 14mb or another, or none for a property that has none.");
        }

        public override void Write(Utf8JsonWriter writer, Basis value, JsonSerializerOptions options) => writer.WriteStringValue(value.IsStated ? value.ToString() : None);
    }
}
