using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>Contract terms as JSON text and back, without loss: what is kept and exchanged.</summary>
/// <remarks>Camel case; enums by name; moisture in per cent; a basis as <c>12mb</c> or <c>dry</c>; dates as 2025-07-09. Unknown and missing fields are faults.</remarks>
public static class TermsJson
{
    internal static readonly JsonSerializerOptions Options = Made();

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
        return StrictJson.TryRead(json, Options, Faults, out terms, out faults);
    }

    private static IReadOnlyList<string> Faults(ContractTerms? read) =>
        read is null || read.Scales.Any(s => s is null || s.Steps.Any(t => t is null) || s.Tiers?.Any(t => t is null) == true) || read.Observed?.Any(o => o is null) == true
            ? ["Contract terms are an object whose scales and steps are objects; read null."]
            : read.Faults();

    private static JsonSerializerOptions Made()
    {
        var options = StrictJson.Options();
        options.WriteIndented = true;
        options.Converters.Add(new MoistureJson());
        options.Converters.Add(new PriceJson());
        return options;
    }

    private sealed class MoistureJson : JsonConverter<Moisture>
    {
        public override Moisture Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Number && reader.TryGetDecimal(out var percent) && percent is >= 0m and < 100m
                ? Moisture.FromPercent(percent)
                : throw new JsonException("Moisture is a number of per cent from 0 up to, not including, 100.");

        public override void Write(Utf8JsonWriter writer, Moisture value, JsonSerializerOptions options) => writer.WriteNumberValue(value.Percent);
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
