using System.Text.Json;
using System.Text.Json.Serialization;

namespace Evengrist.Quantities;

/// <summary>A basis as <c>12mb</c>, <c>dry</c>, or <c>none</c> for a property that has none.</summary>
internal sealed class BasisJson : JsonConverter<Basis>
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
