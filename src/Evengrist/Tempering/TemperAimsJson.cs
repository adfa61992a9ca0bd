using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Tempering;

/// <summary>The aims of tempering as JSON text and back, without loss: what is kept as a paper. Camel case; enums by name; unknown and missing fields are faults.</summary>
public static class TemperAimsJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "temper-aims";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The aims as JSON.</summary>
    public static string Write(TemperAims aims) => JsonSerializer.Serialize(aims, Options);

    /// <summary>Reads aims and checks them.</summary>
    /// <param name="json">The text.</param>
    /// <param name="aims">The aims; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out TemperAims? aims, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, Faults, out aims, out faults);

    private static IReadOnlyList<string> Faults(TemperAims? read) => read is null || read.Aims.Any(a => a is null)
        ? ["The aims are an object with a list of aims and the hardness of each class; read null."]
        : read.Faults();
}
