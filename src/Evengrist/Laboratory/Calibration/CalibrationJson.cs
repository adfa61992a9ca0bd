using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Calibration;

/// <summary>A calibration as JSON text and back, without loss: what is kept by version and exchanged.</summary>
public static class CalibrationJson
{
    /// <summary>How it is written.</summary>
    public static JsonSerializerOptions Options { get; } = StrictJson.Options(JsonNamingPolicy.CamelCase);

    /// <summary>A calibration as JSON.</summary>
    public static string Write(SpectralCalibration calibration) => JsonSerializer.Serialize(calibration, Options);

    /// <summary>Reads a calibration and checks that it can be.</summary>
    /// <param name="json">The text.</param>
    /// <param name="calibration">What was read; null where there is a fault.</param>
    /// <param name="faults">Each a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out SpectralCalibration? calibration, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read?.Faults() ?? ["A calibration is an object; read null."], out calibration, out faults);
}
