namespace Evengrist.Numerics.Mixed;

/// <summary>A linear model with random groups, fitted by restricted likelihood.</summary>
/// <param name="Coefficients">β of the fixed part.</param>
/// <param name="StandardErrors">Of each, the variances taken as known.</param>
/// <param name="Covariance">Of the coefficients.</param>
/// <param name="Variances">Of each grouping, at least 0, unit of the values squared.</param>
/// <param name="Residual">Variance within, above 0.</param>
/// <param name="Criterion">−2 log restricted likelihood.</param>
public sealed record MixedFit(
    IReadOnlyList<double> Coefficients, IReadOnlyList<double> StandardErrors, IReadOnlyList<IReadOnlyList<double>> Covariance, IReadOnlyList<double> Variances, double Residual, double Criterion);
