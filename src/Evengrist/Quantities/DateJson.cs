using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Quantities;

/// <summary>A date as 2025-07-09.</summary>
internal sealed class DateJson : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && LocalDatePattern.Iso.Parse(reader.GetString()!).TryGetValue(default, out var date)
            ? date
            : throw new JsonException("A date is written like 2025-07-09.");

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) => writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}
