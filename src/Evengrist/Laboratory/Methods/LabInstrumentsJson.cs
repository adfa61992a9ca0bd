using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Methods;

/// <summary>The table of instruments as JSON text and back: what is kept as a paper.</summary>
public static class LabInstrumentsJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "lab-instruments";

    /// <summary>The table as JSON.</summary>
    public static string Write(LabInstruments table) => LabJson.Write(table);

    /// <summary>Reads a table and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="table">The table; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out LabInstruments? table, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, t => t.Instruments.Any(i => i is null || i.Tolerances.Any(x => x is null) || i.Calibrations.Any(x => x is null)) ? ["A line of the table is null."] : t.Faults(), out table, out faults);
}
