using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.Shape;
using Evengrist.Quantities;

namespace Evengrist.Bins;

/// <summary>The papers of the bins as JSON: shapes, pack factors, bands and values. Camel case; unknown and missing fields are faults.</summary>
public static class BinPapers
{
    /// <summary>Kind of the paper that holds the shape of a bin; its code is the bin's.</summary>
    public const string Shape = "bin-shape";

    /// <summary>Kind of the paper that holds the pack factor of a bin; its code is the bin's.</summary>
    public const string Calibration = "bin-calibration";

    /// <summary>Kind of the paper that holds the house band of a bin; its code is the bin's.</summary>
    public const string Band = "bin-band";

    /// <summary>Kind of the paper that says what a tonne is worth by class and protein; its newest code <see cref="HouseValues"/> holds for the mill.</summary>
    public const string Values = "band-values";

    /// <summary>Code of the paper of values.</summary>
    public const string HouseValues = "HOUSE";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options(JsonNamingPolicy.CamelCase)) { IgnoreReadOnlyProperties = false };

    /// <summary>A paper as JSON.</summary>
    public static string Write<T>(T paper) => JsonSerializer.Serialize(paper, Options);

    /// <summary>Reads the shape of a bin and checks it.</summary>
    public static bool TryReadShape(string json, [NotNullWhen(true)] out BinShape? shape, out IReadOnlyList<string> faults) => TryRead(json, s => s.Faults(), out shape, out faults);

    /// <summary>Reads a pack factor.</summary>
    public static bool TryReadCalibration(string json, [NotNullWhen(true)] out PackFactor? pack, out IReadOnlyList<string> faults) =>
        TryRead(json, p => p.Value is >= 0.8 and <= 1.3 && p.StandardUncertainty >= 0 ? [] : ["A pack factor lies from 0.8 to 1.3, its uncertainty at 0 or above."], out pack, out faults);

    /// <summary>Reads the house band of a bin and checks it.</summary>
    public static bool TryReadBand(string json, [NotNullWhen(true)] out BinBand? band, out IReadOnlyList<string> faults) => TryRead(json, b => b.Faults(), out band, out faults);

    /// <summary>Reads what a tonne is worth and checks it.</summary>
    public static bool TryReadValues(string json, [NotNullWhen(true)] out BandValues? values, out IReadOnlyList<string> faults) =>
        TryRead(json, v => v.Classes.Values.Any(p => p is null || p.Contains(null!)) ? ["The values of a class are a list of points."] : v.Faults(), out values, out faults);

    private static bool TryRead<T>(string json, Func<T, IReadOnlyList<string>> check, [NotNullWhen(true)] out T? paper, out IReadOnlyList<string> faults)
        where T : class => StrictJson.TryRead(json, Options, read => read is null ? ["It is an object; read null."] : check(read), out paper, out faults);
}
