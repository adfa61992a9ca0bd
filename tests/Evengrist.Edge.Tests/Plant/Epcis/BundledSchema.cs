using System.Text.Json;
using Evengrist.Tests;
using Json.Schema;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>The JSON Schema of EPCIS as of January 2022, evaluated by a library of other people: an independent judge of what we write.</summary>
internal static class BundledSchema
{
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(File.ReadAllText(OpenData.At("epcis", "EPCIS-JSON-Schema.json"))));

    public static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Value.Evaluate(document.RootElement, new EvaluationOptions { RequireFormatValidation = true }).IsValid;
    }

    /// <summary>What it finds, for people.</summary>
    public static IReadOnlyList<string> Faults(string text)
    {
        using var document = JsonDocument.Parse(text);
        var found = Schema.Value.Evaluate(document.RootElement, new EvaluationOptions { RequireFormatValidation = true, OutputFormat = OutputFormat.List });
        return found.IsValid ? [] : [.. (found.Details ?? []).Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Take(20)];
    }
}
