using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>A figure of the model and how it changes with each thing tuning can find.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Gradient">Its change for each unit of each key's logarithm.</param>
/// <param name="ModelError">Shortfall of the model in it, one standard uncertainty.</param>
internal sealed record Figure(double Value, Vector<double> Gradient, double ModelError)
{
    /// <summary>One standard uncertainty of the figure as the mill is known.</summary>
    public double Uncertainty(MillTuning tuning) => Math.Sqrt(Math.Max(0, Gradient * (tuning.Covariance * Gradient)) + Math.Pow(tuning.Scatter * ModelError, 2));
}
