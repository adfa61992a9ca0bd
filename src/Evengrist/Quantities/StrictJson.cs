using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Evengrist.Quantities;

/// <summary>JSON that people write and the mill keeps: camel case; enums by name; a basis as <c>12mb</c> or <c>dry</c>; dates as 2025-07-09; moments as 2026-01-14T12:00:00Z. Unknown, missing and repeated fields are faults.</summary>
public static class StrictJson
{
    /// <summary>How it is read and written; a new one each time, for its owner to add to and keep.</summary>
    /// <param name="enums">How the names of enums are written; null for as they are.</param>
    public static JsonSerializerOptions Options(JsonNamingPolicy? enums = null) => new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.Strict,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        IgnoreReadOnlyProperties = true,
        Converters = { new JsonStringEnumConverter(enums, allowIntegerValues: false), new BasisJson(), new DateJson(), new MomentJson() },
    };

    /// <summary>Reads a value and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="options">How it is read.</param>
    /// <param name="check">What is wrong with what was read, each fault a sentence; null is read as <c>null</c>.</param>
    /// <param name="value">The value; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence, with line and path where the text itself is at fault; empty where there is none.</param>
    public static bool TryRead<T>(string json, JsonSerializerOptions options, Func<T?, IReadOnlyList<string>> check, [NotNullWhen(true)] out T? value, out IReadOnlyList<string> faults)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(check);
        value = null;
        try
        {
            var read = JsonSerializer.Deserialize<T>(json, options);
            faults = check(read);
            value = faults.Count == 0 ? read : null;
        }
        catch (JsonException e)
        {
            faults = [JsonFault.Words(e, typeof(T))];
        }

        return value is not null;
    }
}
