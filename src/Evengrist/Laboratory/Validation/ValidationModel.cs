using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Evengrist.Laboratory.Validation;

/// <summary>Bias and slope of an instrument with their tests, after ISO 12099 [title and scope read, formulas from memory]. Model: docs/model/validation.md.</summary>
public static class ValidationModel
{
    private const double TwoSided = 0.975, OneSided = 0.95;

    /// <summary>Judges.</summary>
    /// <param name="spec">Without faults.</param>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static ValidationOutcome Of(ValidationSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var n = spec.Reference.Count;
        double[] differences = [.. spec.Reference.Zip(spec.Instrument, (r, i) => r - i)];
        var (bias, sep) = differences.MeanStandardDeviation();
        var (meanReference, meanInstrument) = (spec.Reference.Average(), spec.Instrument.Average());
        var spread = spec.Instrument.Sum(i => (i - meanInstrument) * (i - meanInstrument));
        var slope = spec.Instrument.Zip(spec.Reference, (i, r) => (i - meanInstrument) * (r - meanReference)).Sum() / spread;
        var intercept = meanReference - (slope * meanInstrument);
        var left = spec.Instrument.Zip(spec.Reference, (i, r) => r - intercept - (slope * i)).Sum(e => e * e);
        var residual = Math.Sqrt(left / (n - 2));
        var total = spec.Reference.Sum(r => (r - meanReference) * (r - meanReference));
        return new ValidationOutcome(
            n, bias, Math.Sqrt(differences.Average(e => e * e)), sep, BiasFactor(n) * sep, slope, intercept, residual,
            residual > 0 ? Math.Abs(slope - 1) * Math.Sqrt(spread) / residual : Math.Abs(slope - 1) < 1e-9 ? 0 : double.PositiveInfinity, StudentT.InvCDF(0, 1, n - 2, TwoSided),
            spec.Calibration is { } own ? own.Error * ErrorFactor(n, own.Samples - own.Factors - 1) : null, spec.Reference.StandardDeviation(), spec.Reference.Max() - spec.Reference.Min(),
            total > 0 ? 1 - (left / total) : 0, [.. Remarks(spec, n)]);
    }

    /// <summary>Largest bias by chance over SEP: t(0.975; n − 1)/√n.</summary>
    /// <param name="count">Samples, at least 2.</param>
    public static double BiasFactor(int count) => StudentT.InvCDF(0, 1, count - 1, TwoSided) / Math.Sqrt(count);

    /// <summary>Largest SEP by chance over the calibration's error: √F(0.95; n − 1, freedom).</summary>
    /// <param name="count">Samples, at least 2.</param>
    /// <param name="freedom">Degrees of freedom of the calibration's error, at least 1.</param>
    public static double ErrorFactor(int count, int freedom) => Math.Sqrt(FisherSnedecor.InvCDF(count - 1, freedom, OneSided));

    private static IEnumerable<string> Remarks(ValidationSpec spec, int n)
    {
        if (n < ValidationSpec.UsualCount)
        {
            yield return $"{n} samples: at least {ValidationSpec.UsualCount} are asked for (EN 15948).";
        }

        if (spec.Calibration is null)
        {
            yield return "The calibration's own error is not known: whether what is left without bias is too large is not judged.";
        }

        yield return "Formulas after ISO 12099 from memory: check against the standard before a decision rests on them.";
    }
}
