namespace Evengrist.Laboratory.Calibration;

/// <summary>Errors of a set in three numbers, unit of the property; an error is reference − foretold.</summary>
/// <param name="Count">Samples.</param>
/// <param name="Bias">Mean error.</param>
/// <param name="Deviation">Standard deviation of the errors about their mean (n − 1): SEP of a validation set, SECV of cross-validation; not a number for one sample.</param>
/// <param name="Rmse">√(mean of squared errors): RMSEP, RMSECV.</param>
public sealed record ErrorSummary(int Count, double Bias, double Deviation, double Rmse)
{
    /// <summary>Of a set.</summary>
    /// <param name="reference">References, one or more.</param>
    /// <param name="foretold">What was foretold of each.</param>
    public static ErrorSummary Of(IReadOnlyList<double> reference, IReadOnlyList<double> foretold)
    {
        ArgumentNullException.ThrowIfNull(reference);
        double[] errors = [.. reference.Zip(foretold, (r, f) => r - f)];
        var bias = errors.Average();
        return new(errors.Length, bias, Math.Sqrt(errors.Sum(e => (e - bias) * (e - bias)) / (errors.Length - 1)), Math.Sqrt(errors.Average(e => e * e)));
    }
}
