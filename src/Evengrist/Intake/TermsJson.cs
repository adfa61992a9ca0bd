using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Intake;

/// <summary>Contract terms as JSON text and back, without loss: what is kept and exchanged.</summary>
/// <remarks>Camel case; enums by name; moisture in per cent; a basis as <c>12mb</c> or <c>dry</c>; dates as 2025-07-09. Unknown and missing fields are faults.</remarks>
public static class TermsJson
{
    internal static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NumberHandling = JsonNumberHandling.Strict,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        IgnoreReadOnlyProperties = true,
        Converters =
        {
            new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false),
            new MoistureJson(), new BasisJson(), new DateJson(), new PriceJson(),
        },
    };

    /// <summary>The terms as JSON.</summary>
    public static string Write(ContractTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return JsonSerializer.Serialize(terms, Options);
    }

    /// <summary>Reads terms and checks them.</summary>
    /// <param name="json">The text.</param>
    /// <param name="terms">The terms; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence, with line and path where the text itself is at fault; empty where there is none.</param>
    public static bool TryRead(string json, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out ContractTerms? terms, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(json);
        terms = null;
        try
        {
            var read = JsonSerializer.Deserialize<ContractTerms>(json, Options);
            faults = read is null || read.Scales.Any(s => s is null || s.Steps.Any(t => t is null) || s.Tiers?.Any(t => t is null) == true) || read.Observed?.Any(o => o is null) == true
                ? ["Contract terms are an object whose scales and steps are objects; read null."]
                : read.Faults();
            terms = faults.Count == 0 ? read : null;
        }
        catch (JsonException e)
        {
            faults = [JsonFault.Words(e, typeof(ContractTerms))];
        }

        return terms is not null;
    }

    private sealed class MoistureJson : JsonConverter<Moisture>
    {
        public override Moisture Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number && reader.TryGetDecimal(out var percent) && percent is >= 0m and < 100m
                ? Moisture.FromPercent(percent)
                : throw new JsonException("Moisture is a number of per cent from 0 up to, not including, 100.");

        public override void Write(Utf8JsonWriter writer, Moisture value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Percent);
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

    private sealed class DateJson : JsonConverter<LocalDate>
    {
        public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.String && LocalDatePattern.Iso.Parse(reader.GetString()!).TryGetValue(default, out var date)
                ? date
                : throw new JsonException("A date is written like 2025-07-09.");

        public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) => writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
    }

    private sealed class PriceJson : JsonConverter<Price>
    {
        public override Price Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
        {
            var parts = JsonSerializer.Deserialize<Parts>(ref reader, options) ?? throw new JsonException("A price has an amount, a currency and a unit.");
            try
            {
                return Price.Of(Money.Of(parts.Amount, parts.Currency), parts.Per);
            }
            catch (ArgumentException e)
            {
                throw new JsonException(e.Message.Split(" (Parameter")[0], e);
            }
        }

        public override void Write(Utf8JsonWriter writer, Price value, JsonSerializerOptions options) =>
            JsonSerializer.Serialize(writer, new Parts(value.Money.Amount, value.Money.Currency, value.Per), options);

        private sealed record Parts(decimal Amount, string Currency, PriceUnit Per);
    }
}
