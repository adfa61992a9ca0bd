using System.Globalization;
using Evengrist.Laboratory.Validation;
using NodaTime;

namespace Evengrist.Laboratory.Calibration;

/// <summary>Sets bias or slope of a calibration anew by samples that the reference method and the calibration both read. Model: docs/model/spectral-calibration.md.</summary>
public static class AdjustmentModel
{
    /// <summary>Fewest pairs [common practice: a significant mean of ten or more, never one sample].</summary>
    public const int Fewest = 10;

    /// <summary>The test of the pairs, after ISO 12099.</summary>
    /// <param name="calibration">That read them, its adjustments applied.</param>
    /// <param name="reference">By the reference method.</param>
    /// <param name="read">By the calibration, sample by sample, unit and basis of the calibration.</param>
    public static ValidationSpec Test(SpectralCalibration calibration, IReadOnlyList<double> reference, IReadOnlyList<double> read)
    {
        ArgumentNullException.ThrowIfNull(calibration);
        return new(reference, read) { Calibration = (calibration.Errors.Calibration, calibration.Samples, calibration.Factors) };
    }

    /// <summary>The calibration with its bias or slope set: a new one, the old stays as it is.</summary>
    /// <remarks>Shown before = b₀ + s₀ · raw. Bias alone: b₀ + bias, s₀. Slope and bias: a + b · b₀, b · s₀, with reference = a + b · shown.</remarks>
    /// <param name="calibration">As it reads now.</param>
    /// <param name="found">The test of pairs it read.</param>
    /// <param name="kind">What is set.</param>
    /// <param name="at">When.</param>
    /// <param name="by">Who decided it.</param>
    /// <param name="why">Why.</param>
    /// <param name="faults">Each a sentence that says what to do; empty where there is none.</param>
    /// <returns>The calibration; null where there are faults.</returns>
    public static SpectralCalibration? Adjusted(SpectralCalibration calibration, ValidationOutcome found, AdjustmentKind kind, Instant at, string by, string why, out IReadOnlyList<string> faults)
    {
        ArgumentNullException.ThrowIfNull(calibration);
        ArgumentNullException.ThrowIfNull(found);
        var (bias, slope) = calibration.Adjustments is [.., var last] ? (last.Bias, last.Slope) : (0, 1);
        var next = kind switch
        {
            AdjustmentKind.Bias => (Bias: bias + found.Bias, Slope: slope),
            AdjustmentKind.SlopeAndBias => (Bias: found.Intercept + (found.Slope * bias), Slope: found.Slope * slope),
            _ => (Bias: bias, Slope: slope),
        };
        faults =
        [
            .. kind is AdjustmentKind.Bias or AdjustmentKind.SlopeAndBias ? Array.Empty<string>() : ["Choose what to set: the bias alone, or slope and bias."],
            .. found.Count >= Fewest ? Array.Empty<string>() : [$"There are {found.Count} pairs: {Fewest} or more are needed before anything is set, {ValidationSpec.UsualCount} or more are asked for."],
            .. next.Slope > 0 ? Array.Empty<string>() : ["The slope would not be above 0: the pairs do not rise together. Look whether each reference belongs to its reading."],
            .. string.IsNullOrWhiteSpace(by) ? ["Say who decides it."] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(why) ? ["Say why it is set: new harvest, new lamp, another reference laboratory."] : Array.Empty<string>(),
        ];
        return faults.Count > 0 ? null : calibration with { Adjustments = [.. calibration.Adjustments, new CalibrationAdjustment(at, by.Trim(), next.Bias, next.Slope, found.Count, why.Trim(), Words(found))] };
    }

    /// <summary>The test in a line, to be kept with what was set.</summary>
    public static string Words(ValidationOutcome found)
    {
        ArgumentNullException.ThrowIfNull(found);
        return string.Create(CultureInfo.InvariantCulture, $"{found.Count} pairs: bias {found.Bias:0.0000} {(found.IsBiased ? "beyond" : "within")} {found.BiasLimit:0.0000}, slope {found.Slope:0.0000} (t {found.SlopeT:0.00} {(found.IsSloped ? "beyond" : "within")} {found.SlopeLimit:0.00}), SEP {found.Sep:0.0000}{(found.SepLimit is { } most ? $" {(found.IsTooWide == true ? "beyond" : "within")} {most:0.0000}" : "")}; the test speaks for {found.Decision switch { ValidationDecision.Recalibrate => "calibrating anew", ValidationDecision.SlopeAndBias => "slope and bias", ValidationDecision.BiasOnly => "the bias alone", _ => "leaving it as it is" }}");
    }
}
