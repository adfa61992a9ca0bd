using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Quantities;

namespace Evengrist.Bins.Storage;

/// <summary>Constants of the equilibrium equations as JSON text and back, without loss: what is kept as a paper of the kind <c>emc-constants</c>.</summary>
/// <remarks>Camel case; enums by name. Unknown and missing fields are faults.</remarks>
public static class EmcJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "emc-constants";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options())
    {
        WriteIndented = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The table as JSON.</summary>
    public static string Write(EmcTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        return JsonSerializer.Serialize(new Written(table.Constants, table.Classes), Options);
    }

    /// <summary>Reads a table and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="table">The table; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out EmcTable? table, out IReadOnlyList<string> faults)
    {
        table = StrictJson.TryRead<Written>(json, Options, Faults, out var read, out faults) ? read.Table : null;
        return table is not null;
    }

    private static IReadOnlyList<string> Faults(Written? read) => read is null || read.Constants.Any(c => c is null) || read.Classes.Any(c => c.Value is null)
        ? ["The constants are an object with a list of constants and the wheat of each class; read null."]
        : read.Table.Faults();

    private sealed record Written(IReadOnlyList<EmcConstants> Constants, IReadOnlyDictionary<string, string> Classes)
    {
        [JsonIgnore]
        public EmcTable Table => new(Constants, Classes);
    }
}
