using Evengrist.Laboratory.Validation;

namespace Evengrist.Plant.Cases;

/// <summary>Reference and instrument of the same samples posed in JSON, to be validated.</summary>
public sealed record LabValidateCase
{
    /// <summary>Reference results.</summary>
    public IReadOnlyList<double> Reference { get; init; } = [];

    /// <summary>The instrument's results.</summary>
    public IReadOnlyList<double> Instrument { get; init; } = [];

    /// <summary>The calibration's own error; null where not known.</summary>
    public PosedCalibration? Calibration { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        { "reference": [ ... ], "instrument": [ of the same samples, one unit and basis ], "calibration"?: { "error": SEC, "samples": of the calibration, "factors" } }
        """,
        """
        { "reference": [ 10.2, 11.4, 12.1, 9.8, 13.0, 10.9 ], "instrument": [ 10.62, 11.45, 12.48, 9.93, 13.07, 11.31 ], "calibration": { "error": 0.16, "samples": 120, "factors": 8 } }
        """);

    /// <summary>The question it poses.</summary>
    public ValidationSpec Spec => new(Reference, Instrument) { Calibration = Calibration is { } c ? (c.Error, c.Samples, c.Factors) : null };

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabValidateCase> Read(Stream stream) => SeasonCase.ReadAs<LabValidateCase>(stream).Then(posed => posed.Spec.Faults() is { Count: > 0 } faults ? Parsing.Failed<LabValidateCase>([.. faults.Select(f => Fault.Told("$", f))]) : Parsing.Got(posed));
}

/// <summary>What is known of a calibration.</summary>
/// <param name="Error">SEC.</param>
/// <param name="Samples">How many samples it was made from.</param>
/// <param name="Factors">How many factors it has.</param>
public sealed record PosedCalibration(double Error, int Samples, int Factors);
