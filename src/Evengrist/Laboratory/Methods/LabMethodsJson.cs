using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Methods;

/// <summary>The table of methods as JSON text and back: what is kept as a paper.</summary>
public static class LabMethodsJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "lab-methods";

    /// <summary>The table as JSON.</summary>
    public static string Write(LabMethods table) => LabJson.Write(table);

    /// <summary>Reads a table and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="table">The table; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out LabMethods? table, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, t => t.Methods.Any(m => m is null) ? ["A line of the table is null."] : t.Faults(), out table, out faults);
}
