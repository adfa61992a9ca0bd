namespace Evengrist.Laboratory.Validation;

/// <summary>An instrument's results to be held against reference results of the same samples, in one unit and on one basis.</summary>
/// <param name="Reference">Reference results.</param>
/// <param name="Instrument">The instrument's, sample by sample.</param>
public sealed record ValidationSpec(IReadOnlyList<double> Reference, IReadOnlyList<double> Instrument)
{
    /// <summary>Fewest and most samples.</summary>
    public const int Fewest = 3, Most = 10_000;

    /// <summary>At least so many are asked for [EN 15948:2020, excerpt read].</summary>
    public const int UsualCount = 20;

    /// <summary>The calibration's own standard error (SEC), the count of its samples and of its factors; null where not known, and then the residual error is not judged.</summary>
    public (double Error, int Samples, int Factors)? Calibration { get; init; }

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Reference.Count == Instrument.Count ? Array.Empty<string>() : [$"There are {Reference.Count} reference results and {Instrument.Count} of the instrument: give both of every sample."],
        .. Reference.Count is >= Fewest and <= Most ? Array.Empty<string>() : [$"There are {Reference.Count} samples: {Fewest} to {Most} are judged, {UsualCount} or more are asked for."],
        .. Reference.Concat(Instrument).All(double.IsFinite) ? Array.Empty<string>() : ["A value is no number."],
        .. Instrument.Distinct().Count() > 1 || Instrument.Count == 0 ? Array.Empty<string>() : ["The instrument read the same of all: take samples over its whole range."],
        .. Calibration is null or { Error: > 0 and < 1e6, Factors: >= 0 } && (Calibration is not { } c || c.Samples - c.Factors >= 2) ? Array.Empty<string>() : ["A calibration's error is above 0, and its samples are more than its factors by two."],
    ];
}
