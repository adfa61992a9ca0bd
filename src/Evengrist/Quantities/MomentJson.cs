using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Quantities;

/// <summary>A moment as 2026-01-14T12:00:00Z.</summary>
internal sealed class MomentJson : JsonConverter<Instant>
{
    public override Instant Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && InstantPattern.ExtendedIso.Parse(reader.GetString()!).TryGetValue(default, out var moment)
            ? moment
            : throw new JsonException("A moment is written like 2026-01-14T12:00:00Z.");

    public override void Write(Utf8JsonWriter writer, Instant value, JsonSerializerOptions options) => writer.WriteStringValue(InstantPattern.ExtendedIso.Format(value));
}
