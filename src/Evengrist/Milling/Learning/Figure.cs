using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>What a figure is of.</summary>
public enum FigureKind
{
    /// <summary>Not said; never given.</summary>
    None = 0,

    /// <summary>Yield of products, or what enters a passage.</summary>
    Flow = 1,

    /// <summary>Ash.</summary>
    Ash = 2,

    /// <summary>Protein.</summary>
    Protein = 3,

    /// <summary>A release, or what falls through a test sieve.</summary>
    Release = 4,
}

/// <summary>A figure of the model and how it changes with each thing tuning can find.</summary>
/// <param name="Kind">What it is of.</param>
/// <param name="Value">The figure.</param>
/// <param name="Gradient">Its change for each unit of each key's logarithm.</param>
/// <param name="ModelError">Shortfall of the model in it, one standard uncertainty.</param>
internal sealed record Figure(FigureKind Kind, double Value, Vector<double> Gradient, double ModelError)
{
    /// <summary>One standard uncertainty of the figure as the mill is known.</summary>
    public double Uncertainty(MillTuning tuning) => Math.Sqrt(Math.Max(0, Gradient * (tuning.Covariance * Gradient)) + Math.Pow(tuning.ScatterOf(Kind) * ModelError, 2));
}
