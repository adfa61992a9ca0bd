using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Balance;

/// <summary>First order spread of a number that follows from others.</summary>
internal static class Spread
{
    /// <summary>The number, and one standard uncertainty: √(gᵀ C g), g its slopes by differences to both sides.</summary>
    /// <param name="follows">The number from the others.</param>
    /// <param name="values">The others.</param>
    /// <param name="covariance">Theirs.</param>
    public static (double Value, double StandardUncertainty) Of(Func<double[], double> follows, double[] values, Matrix<double> covariance)
    {
        var slopes = Vector<double>.Build.Dense(values.Length, i =>
        {
            var step = 1e-6 * Math.Max(Math.Abs(values[i]), 1e-3);
            double At(double shift) => follows([.. values.Select((v, j) => j == i ? v + shift : v)]);
            return (At(step) - At(-step)) / (2 * step);
        });
        return (follows(values), Math.Sqrt(Math.Max(0, slopes * (covariance * slopes))));
    }
}
