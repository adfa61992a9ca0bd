using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Specifications;

/// <summary>Specifications and legal rules as JSON text and back, without loss: what is kept as papers. Camel case; enums by name; unknown and missing fields are faults.</summary>
public static class SpecificationJson
{
    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A specification as JSON.</summary>
    public static string Write(Specification specification) => JsonSerializer.Serialize(specification, Options);

    /// <summary>The legal rules as JSON.</summary>
    public static string Write(LegalRules rules) => JsonSerializer.Serialize(rules, Options);

    /// <summary>Reads a specification and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out Specification? specification, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read?.Faults() ?? ["A specification is an object with code, flour and items; read null."], out specification, out faults);

    /// <summary>Reads legal rules and checks them; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out LegalRules? rules, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read?.Faults() ?? ["Legal rules are an object with a list of rules; read null."], out rules, out faults);
}
