using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;
using Evengrist.Bins.Shape;

namespace Evengrist.Bins;

/// <summary>The papers of the bins as JSON: shapes and pack factors. Camel case; unknown and missing fields are faults.</summary>
public static class BinPapers
{
    /// <summary>Kind of the paper that holds the shape of a bin; its code is the bin's.</summary>
    public const string Shape = "bin-shape";

    /// <summary>Kind of the paper that holds the pack factor of a bin; its code is the bin's.</summary>
    public const string Calibration = "bin-calibration";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        NumberHandling = JsonNumberHandling.Strict,
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>A paper as JSON.</summary>
    public static string Write<T>(T paper) => JsonSerializer.Serialize(paper, Options);

    /// <summary>Reads the shape of a bin and checks it.</summary>
    public static bool TryReadShape(string json, [NotNullWhen(true)] out BinShape? shape, out IReadOnlyList<string> faults) => TryRead(json, s => s.Faults(), out shape, out faults);

    /// <summary>Reads a pack factor.</summary>
    public static bool TryReadCalibration(string json, [NotNullWhen(true)] out PackFactor? pack, out IReadOnlyList<string> faults) =>
        TryRead(json, p => p.Value is >= 0.8 and <= 1.3 && p.StandardUncertainty >= 0 ? [] : ["A pack factor lies from 0.8 to 1.3, its uncertainty at 0 or above."], out pack, out faults);

    internal static bool TryRead<T>(string json, Func<T, IReadOnlyList<string>> check, [NotNullWhen(true)] out T? paper, out IReadOnlyList<string> faults)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(json);
        paper = null;
        try
        {
            var read = JsonSerializer.Deserialize<T>(json, Options);
            faults = read is null ? ["It is an object; read null."] : check(read);
            paper = faults.Count == 0 ? read : null;
        }
        catch (JsonException fault)
        {
            faults = [fault.Message];
        }

        return paper is not null;
    }
}
