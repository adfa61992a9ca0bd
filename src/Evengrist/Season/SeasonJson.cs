using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>What a plan is made from, and plans, as JSON text and back, without loss: what is kept by version and exchanged.</summary>
/// <remarks>Camel case; properties and reasons by name; a basis as <c>12mb</c> or <c>dry</c>; dates as 2025-07-09; no limit as <c>"Infinity"</c>. Unknown and missing fields are faults.</remarks>
public static class SeasonJson
{
    /// <summary>How it is written; for whoever puts a spec or plan into JSON of his own.</summary>
    public static JsonSerializerOptions Options { get; } = Made();

    /// <summary>A spec as JSON.</summary>
    public static string Write(SeasonSpec spec) => JsonSerializer.Serialize(spec, Options);

    /// <summary>A plan as JSON, with what it was made from.</summary>
    public static string Write(SeasonPlan plan) => JsonSerializer.Serialize(plan, Options);

    /// <summary>Reads a spec or a plan. What a spec asks is not checked here: <see cref="SeasonFaults"/> does that.</summary>
    /// <typeparam name="T"><see cref="SeasonSpec"/>, <see cref="SeasonPlan"/> or a record that holds them.</typeparam>
    /// <param name="json">The text.</param>
    /// <param name="value">What was read; null where there is a fault.</param>
    /// <param name="fault">What is wrong, with its line and path; empty where nothing is.</param>
    public static bool TryRead<T>(string json, [NotNullWhen(true)] out T? value, out string fault)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(json);
        (value, fault) = (null, "");
        try
        {
            value = JsonSerializer.Deserialize<T>(json, Options);
            fault = value is null ? "An object is needed; read null." : "";
        }
        catch (JsonException e)
        {
            fault = e.Message;
        }
        catch (NotSupportedException e)
        {
            fault = e.Message;
        }

        return value is not null;
    }

    private static JsonSerializerOptions Made()
    {
        var options = StrictJson.Options();
        options.NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals;
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { OneSideIsEnough } };
        options.Converters.Add(new QualityByName());
        return options;
    }

    // A limit has a least, a most, or both; what is left out is no limit.
    private static void OneSideIsEnough(JsonTypeInfo info)
    {
        foreach (var property in info.Type == typeof(SeasonLimit) ? info.Properties.Where(p => p.PropertyType == typeof(double?)) : [])
        {
            property.IsRequired = false;
        }
    }

    private sealed class QualityByName : JsonConverter<SeasonQuality>
    {
        public override SeasonQuality Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var values = new Dictionary<Property, SeasonValue>();
            foreach (var (name, value) in JsonSerializer.Deserialize<Dictionary<string, SeasonValue?>>(ref reader, options) ?? [])
            {
                values[Enum.TryParse<Property>(name, out var what) && Enum.GetName(what) == name ? what : throw new JsonException($"There is no property {name}; write Protein, FallingNumber, TestWeight …")] =
                    value ?? throw new JsonException($"{name} is null; give its value.");
            }

            return new SeasonQuality(values);
        }

        public override void Write(Utf8JsonWriter writer, SeasonQuality value, JsonSerializerOptions options)
        {
            writer.WriteStartObject();
            foreach (var (what, one) in value.Values.OrderBy(v => v.Key))
            {
                writer.WritePropertyName(what.ToString());
                JsonSerializer.Serialize(writer, one, options);
            }

            writer.WriteEndObject();
        }
    }
}
