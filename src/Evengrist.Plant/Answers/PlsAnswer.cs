using System.Text.Json;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Plant.Answers;

/// <summary>A calibration, with what speaks for and against it, in the unit of the property.</summary>
/// <param name="Property">What is foretold.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its basis.</param>
/// <param name="Treatment">What is done to the spectra.</param>
/// <param name="Samples">In the calibration.</param>
/// <param name="Factors">That were taken.</param>
/// <param name="OneStandardError">Factors by that rule.</param>
/// <param name="FirstMinimum">Factors at the first minimum.</param>
/// <param name="Least">Factors with the least error of cross-validation.</param>
/// <param name="Errors">SEC, SECV, SEP, bias of the samples kept back.</param>
/// <param name="Curve">Errors by the number of factors.</param>
/// <param name="Findings">Of each sample of the set.</param>
/// <param name="KeptBack">Of the samples kept back.</param>
/// <param name="Remarks">What else has to be known.</param>
/// <param name="Calibration">The calibration, to be kept and to read spectra with.</param>
public sealed record PlsAnswer(
    string Property, string Unit, string Basis, string Treatment, int Samples, int Factors, int OneStandardError, int FirstMinimum, int Least, CalibrationErrors Errors, IReadOnlyList<FactorErrors> Curve,
    IReadOnlyList<SampleFinding> Findings, IReadOnlyList<PlsReadingAnswer> KeptBack, IReadOnlyList<string> Remarks, JsonElement Calibration)
{
    /// <summary>Answers a spec, or says why there is no calibration.</summary>
    public static Reply<PlsAnswer> To(CalibrationSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return CalibrationModel.Of(spec) is { } made ? new(Of(made), []) : new(null, ["The spectra, treated, hold nothing that goes with the property. Look at the treatment, and whether the references belong to the spectra."]);
    }

    /// <summary>An outcome as it is answered.</summary>
    public static PlsAnswer Of(CalibrationOutcome made)
    {
        ArgumentNullException.ThrowIfNull(made);
        var c = made.Calibration;
        return new(
            c.Purpose.Property, c.Purpose.Unit, c.Purpose.Basis, c.Pretreatment.ToString(), c.Samples, c.Factors, made.Suggested[FactorChoice.OneStandardError], made.Suggested[FactorChoice.FirstMinimum], made.Suggested[FactorChoice.Least],
            c.Errors, made.Curve, made.Findings, [.. made.Validation.Select(v => PlsReadingAnswer.Of(v.Id, v.Reading, v.Reference))], made.Remarks, JsonSerializer.SerializeToElement(c, CalibrationJson.Options));
    }
}
