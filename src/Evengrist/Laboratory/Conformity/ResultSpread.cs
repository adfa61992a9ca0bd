namespace Evengrist.Laboratory.Conformity;

/// <summary>Why a result differs from the lot's mean, as standard deviations in the unit of the result.</summary>
/// <remarks>
/// The bias part is the same in every result of one instrument: a mean of many does not average it away, u² = (u₁² − b²)/n + (s² + t²)/k + b² for n results
/// on k samples. Derived from the GUM (JCGM 100): correlated contributions add whole. Model: docs/model/conformity.md.
/// </remarks>
/// <param name="OneResult">u₁: one result by itself, its bias part included; at least 0.</param>
public sealed record ResultSpread(double OneResult)
{
    /// <summary>b: what all results of the instrument are off by together, one standard deviation; within <see cref="OneResult"/>, 0 where none is stated.</summary>
    public double Bias { get; init; }

    /// <summary>s: from one sample of the same spot to the next; 0 where it is within <see cref="OneResult"/> or not known.</summary>
    public double Sampling { get; init; }

    /// <summary>t: from one part of the lot to another; 0 where it is not known.</summary>
    public double Lot { get; init; }

    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => new[] { OneResult, Bias, Sampling, Lot }.Any(d => !(d >= 0 && double.IsFinite(d))) ? "A standard deviation is a finite number of at least 0."
        : Bias > OneResult ? "The bias part lies within the uncertainty of one result: it cannot be the larger." : null;

    /// <summary>Standard uncertainty of the mean of results as the lot's mean.</summary>
    /// <param name="results">n, at least 1.</param>
    /// <param name="samples">k, from 1 to n.</param>
    public double OfMean(int results, int samples)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(results, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        var own = (OneResult * OneResult) - (Bias * Bias);
        return Math.Sqrt((own / results) + (((Sampling * Sampling) + (Lot * Lot)) / Math.Min(samples, results)) + (Bias * Bias));
    }
}
