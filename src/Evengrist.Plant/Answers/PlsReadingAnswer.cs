using Evengrist.Laboratory.Calibration;

namespace Evengrist.Plant.Answers;

/// <summary>A reading of a spectrum, in the unit of the calibration.</summary>
/// <param name="Id">The sample.</param>
/// <param name="Reference">By the reference method, where it is known.</param>
/// <param name="Value">By the calibration.</param>
/// <param name="StandardUncertainty">One standard uncertainty.</param>
/// <param name="GlobalH">How far its scores lie from those of the set.</param>
/// <param name="Residual">Squared distance from the factors.</param>
/// <param name="Outside">In what it lies outside the calibration; empty where it does not.</param>
/// <param name="MayDecide">Whether it may release or price by itself.</param>
public sealed record PlsReadingAnswer(string Id, double? Reference, double Value, double StandardUncertainty, double GlobalH, double Residual, IReadOnlyList<string> Outside, bool MayDecide)
{
    /// <summary>A reading as it is answered.</summary>
    public static PlsReadingAnswer Of(string id, SpectralReading read, double? reference = null)
    {
        ArgumentNullException.ThrowIfNull(read);
        return new(id, reference, read.Value, read.StandardUncertainty, read.GlobalH, read.Residual, [.. Words(read.Outside)], read.MayDecide);
    }

    /// <summary>Why a reading lies outside, in words.</summary>
    public static IEnumerable<string> Words(OutsideCalibration outside)
    {
        if (outside.HasFlag(OutsideCalibration.Scores))
        {
            yield return "far from the set";
        }

        if (outside.HasFlag(OutsideCalibration.Residual))
        {
            yield return "spectrum not known";
        }

        if (outside.HasFlag(OutsideCalibration.Range))
        {
            yield return "beyond the range";
        }
    }
}
