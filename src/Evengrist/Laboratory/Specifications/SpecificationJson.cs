using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Specifications;

/// <summary>Specifications and legal rules as JSON text and back, without loss: what is kept as papers. Camel case; enums by name; unknown and missing fields are faults.</summary>
public static class SpecificationJson
{
    /// <summary>A specification as JSON.</summary>
    public static string Write(Specification specification) => LabJson.Write(specification);

    /// <summary>The legal rules as JSON.</summary>
    public static string Write(LegalRules rules) => LabJson.Write(rules);

    /// <summary>Reads a specification and checks it; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out Specification? specification, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, read => read.Faults(), out specification, out faults, "A specification is an object with code, flour and items; read null.");

    /// <summary>Reads legal rules and checks them; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out LegalRules? rules, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, read => read.Faults(), out rules, out faults, "Legal rules are an object with a list of rules; read null.");
}
