using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Laboratory;

/// <summary>Tables and papers of the laboratory as JSON text and back, without loss. Camel case; enums by name; unknown and missing fields are faults.</summary>
internal static class LabJson
{
    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly JsonSerializerOptions Short = new(Options) { WriteIndented = false };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>On one line, for particulars of a happening.</summary>
    public static string WriteShort<T>(T value) => JsonSerializer.Serialize(value, Short);

    /// <summary>Reads a value and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="check">What is wrong with it, each a sentence.</param>
    /// <param name="value">The value; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    /// <param name="ifNull">What is said of <c>null</c>.</param>
    public static bool TryRead<T>(string json, Func<T, IReadOnlyList<string>> check, [NotNullWhen(true)] out T? value, out IReadOnlyList<string> faults, string ifNull = "It is null; write an object.")
        where T : class => StrictJson.TryRead(json, Options, read => read is null ? [ifNull] : check(read), out value, out faults);
}
