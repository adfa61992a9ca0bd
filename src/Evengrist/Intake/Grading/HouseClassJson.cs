using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>A house class as JSON text and back, without loss: what is kept as a paper of the kind <see cref="Kind"/>.</summary>
/// <remarks>Camel case; properties by name (<c>Protein</c>); a basis as <c>12mb</c> or <c>dry</c>. Unknown and missing fields are faults.</remarks>
public static class HouseClassJson
{
    /// <summary>The kind of paper.</summary>
    public const string Kind = "house-class";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NumberHandling = JsonNumberHandling.Strict,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        IgnoreReadOnlyProperties = true,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutWhatSaysNothing } },
        Converters = { new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false), new BasisText() },
    };

    /// <summary>The class as JSON.</summary>
    public static string Write(HouseClass house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return JsonSerializer.Serialize(house, Options);
    }

    /// <summary>Reads a house class and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="house">The class; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out HouseClass? house, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(json);
        house = null;
        try
        {
            var read = JsonSerializer.Deserialize<HouseClass>(json, Options);
            faults = read is null || read.Limits.Any(l => l is null) || read.Bands.Any(b => b is null)
                ? ["A house class is an object whose bands are names and whose limits are objects; read null."]
                : read.Faults();
            house = faults.Count == 0 ? read : null;
        }
        catch (JsonException e)
        {
            faults = [JsonFault.Words(e, typeof(HouseClass))];
        }

        return house is not null;
    }

    private static void LeaveOutWhatSaysNothing(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            property.ShouldSerialize = (_, value) => value is not (null or "" or false or System.Collections.ICollection { Count: 0 } or Basis { IsStated: false });
        }
    }

    private sealed class BasisText : JsonConverter<Basis>
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
