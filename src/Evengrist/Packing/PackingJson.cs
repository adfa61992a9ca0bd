using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Packing;

/// <summary>Papers of the packing room as JSON text and back, without loss. Camel case; enums by name; unknown and missing fields are faults.</summary>
internal static class PackingJson
{
    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write<T>(T value) => JsonSerializer.Serialize(value, Options);

    /// <summary>Reads a value and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="check">What is wrong with it, each a sentence.</param>
    /// <param name="value">The value; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead<T>(string json, Func<T, IReadOnlyList<string>> check, [NotNullWhen(true)] out T? value, out IReadOnlyList<string> faults)
        where T : class => StrictJson.TryRead(json, Options, read => read is null ? ["It is null; write an object."] : check(read), out value, out faults);
}
