namespace Evengrist.Laboratory.Validation;

/// <summary>How an instrument agrees with the reference; differences are reference less instrument. Model: docs/model/validation.md.</summary>
/// <param name="Count">How many samples.</param>
/// <param name="Bias">Mean difference: what is to be added to the instrument's result.</param>
/// <param name="Rmsep">Root mean square of the differences, bias included.</param>
/// <param name="Sep">Standard deviation of the differences, bias taken out.</param>
/// <param name="BiasLimit">A bias above it, either way, is no chance (95 %).</param>
/// <param name="Slope">Of the reference on the instrument.</param>
/// <param name="Intercept">Of the same line.</param>
/// <param name="Residual">Standard deviation about that line.</param>
/// <param name="SlopeT">How far the slope lies from 1, in its own standard deviations.</param>
/// <param name="SlopeLimit">A slope beyond it is no chance (95 %).</param>
/// <param name="SepLimit">Largest SEP that the calibration's own error and chance leave open (95 %); null where the calibration is not known.</param>
/// <param name="ReferenceDeviation">Standard deviation of the reference results.</param>
/// <param name="Range">Largest less least reference result.</param>
/// <param name="RSquared">Share of the references' variance that the line takes.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record ValidationOutcome(
    int Count, double Bias, double Rmsep, double Sep, double BiasLimit, double Slope, double Intercept, double Residual, double SlopeT, double SlopeLimit, double? SepLimit, double ReferenceDeviation, double Range,
    double RSquared, IReadOnlyList<string> Remarks)
{
    /// <summary>Whether the bias is no chance.</summary>
    public bool IsBiased => Math.Abs(Bias) > BiasLimit;

    /// <summary>Whether the slope differs from 1 by more than chance.</summary>
    public bool IsSloped => SlopeT > SlopeLimit;

    /// <summary>Whether what is left without bias is too large; null where the calibration is not known.</summary>
    public bool? IsTooWide => SepLimit is { } most ? Sep > most : null;

    /// <summary>Standard deviation of the references over SEP; a guide only; null where the SEP is 0 but for rounding.</summary>
    public double? Rpd => Differs ? ReferenceDeviation / Sep : null;

    /// <summary>Range over SEP; a guide only; null where the SEP is 0 but for rounding.</summary>
    public double? Rer => Differs ? Range / Sep : null;

    // Pairs that all differ by the same leave no more than the rounding of doubles, far below any reading.
    private bool Differs => Sep > 1e-9 * Range;

    /// <summary>What is asked for: a named person decides.</summary>
    public ValidationDecision Decision => (IsTooWide, IsSloped, IsBiased) switch
    {
        (true, _, _) => ValidationDecision.Recalibrate,
        (_, true, _) => ValidationDecision.SlopeAndBias,
        (_, _, true) => ValidationDecision.BiasOnly,
        _ => ValidationDecision.None,
    };
}
