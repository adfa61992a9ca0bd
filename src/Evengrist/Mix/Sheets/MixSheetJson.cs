using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Mix.Sheets;

/// <summary>Mix sheets as JSON text and back, without loss.</summary>
/// <remarks>Camel case; properties by name; a basis as <c>12mb</c> or <c>none</c>; moments as 2026-01-14T12:00:00Z. Unknown and missing fields are faults.</remarks>
public static class MixSheetJson
{
    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>The sheet as JSON.</summary>
    public static string Write(MixSheet sheet) => JsonSerializer.Serialize(sheet, Options);

    /// <summary>Reads a sheet and checks it by itself.</summary>
    /// <param name="json">The text.</param>
    /// <param name="sheet">The sheet; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out MixSheet? sheet, out IReadOnlyList<string> faults) => StrictJson.TryRead(json, Options, Faults, out sheet, out faults);

    private static IReadOnlyList<string> Faults(MixSheet? read) =>
        read is null || read.Gates.Any(g => g is null || g.Values.Any(v => v is null)) || read.Limits.Any(l => l is null) || read.Expected.Any(e => e is null) || read.LeftOut.Any(l => l is null) || read.Remarks.Any(r => r is null)
            ? ["A mix sheet is an object whose gates, limits and expected values are objects; read null."]
            : MixSheetCheck.Faults(read);
}
