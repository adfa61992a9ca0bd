using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Spectra;

namespace Evengrist.Plant.Cases;

/// <summary>New spectra and the calibration they are to be read with, posed in JSON.</summary>
/// <param name="Calibration">As it was made.</param>
/// <param name="Spectra">CSV or JCAMP-DX text.</param>
public sealed record PlsReadCase(SpectralCalibration Calibration, string Spectra)
{
    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        { "calibration": { as calibrating answers it }, "spectra": CSV (id, w1100, w1102 …) or JCAMP-DX text, on the axis of the calibration }
        """,
        """
        { "calibration": { "purpose": { "property": "protein", "unit": "%", "basis": "12mb", "method": "" }, "axis": { "positions": [ 1100, 1200 ], "unit": "nm" }, "pretreatment": { "steps": [] },
            "intercept": 4, "coefficients": [ 10, 10 ], "mean": [ 0.3, 0.4 ], "projections": [ [ 0.7, 0.7 ] ], "loadings": [ [ 0.7, 0.7 ] ], "scoreSquares": [ 0.05 ], "meanResidual": 0.0001,
            "samples": 20, "least": 9, "most": 14, "errors": { "calibration": 0.2, "crossValidation": 0.25, "prediction": null, "bias": null }, "adjustments": [] },
          "spectra": "id,w1100,w1200\na,0.31,0.42\n" }
        """);

    /// <summary>Reads a case.</summary>
    public static Parsed<PlsReadCase> Read(Stream stream) => SeasonCase.ReadAs<PlsReadCase>(stream).Then(posed => posed.Calibration.Faults() is { Count: > 0 } faults
        ? Parsing.Failed<PlsReadCase>([.. faults.Select(f => Fault.Told("$.calibration", f))]) : Parsing.Got(posed));

    /// <summary>The spectra, checked to be on the calibration's axis.</summary>
    public static Parsed<SpectraTable> OnAxis(SpectralCalibration calibration, SpectraTable table) =>
        table.Between(calibration.Axis.Positions.Min(), calibration.Axis.Positions.Max()).Then(within => calibration.Axis.Difference(within.Axis) is { } differs
            ? Parsing.Failed<SpectraTable>(Fault.Told("", $"The spectra are not on the axis of the calibration: {differs}. Measure or save them on {calibration.Axis.Count} channels from {calibration.Axis.Positions[0]:0.###} to {calibration.Axis.Positions[^1]:0.###} {calibration.Axis.Unit}."))
            : Parsing.Got(within));
}
