using Evengrist.Laboratory.Calibration;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>The calibrations of spectra that a laboratory keeps: papers by version, one for each property. A version never changes; which one reads is said each time.</summary>
public static class SpectralCalibrations
{
    private const string Kind = "spectral-calibration";

    /// <summary>Every version, by property.</summary>
    public static IReadOnlyList<KeptCalibration> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(Kind).All().Select(Read).OfType<KeptCalibration>()];
    }

    /// <summary>One version; null where it is not kept.</summary>
    public static KeptCalibration? Find(Mill mill, string code, int version)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(Kind).Find(code, version) is { } paper ? Read(paper) : null;
    }

    /// <summary>Keeps a calibration as its property's next version; the newest once more changes nothing.</summary>
    /// <exception cref="ArgumentException">It has faults; the message says which.</exception>
    public static KeptCalibration Keep(Mill mill, SpectralCalibration calibration, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(calibration);
        if (calibration.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(calibration));
        }

        var (code, shelf) = (calibration.Purpose.Property.Trim().ToLowerInvariant(), mill.Papers(Kind));
        return Read(shelf.Find(code, shelf.KeepNext(code, CalibrationJson.Write(calibration), by))!)!;
    }

    private static KeptCalibration? Read(Paper paper) => CalibrationJson.TryRead(paper.Json, out var calibration, out _) ? new(paper.Code, paper.Version, paper.By, paper.Recorded, calibration) : null;
}

/// <summary>A calibration as it is kept.</summary>
/// <param name="Code">Of its property.</param>
/// <param name="Version">From 1.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Recorded">When.</param>
/// <param name="Calibration">The calibration.</param>
public sealed record KeptCalibration(string Code, int Version, string By, Instant Recorded, SpectralCalibration Calibration);
