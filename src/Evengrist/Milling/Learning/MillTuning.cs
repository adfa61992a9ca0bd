using Evengrist.Milling.Sheet;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>What is known of a mill beyond its flow sheet: factors on the model's figures, as logarithms, with their covariance. It shrinks as data come.</summary>
public sealed class MillTuning
{
    internal MillTuning(IReadOnlyList<TuneKey> keys, Vector<double> values, Matrix<double> covariance, Matrix<double> prior, IReadOnlyDictionary<FigureKind, double> scatter, int figures)
        => (Keys, Values, Covariance, Prior, Scatter, Figures) = (keys, values, covariance, prior, scatter, figures);

    /// <summary>What can be found.</summary>
    public IReadOnlyList<TuneKey> Keys { get; }

    /// <summary>By kind of figure: how far the measured ones lay from the tuned model against what they were said to be uncertain by; what is not there lay no further.</summary>
    public IReadOnlyDictionary<FigureKind, double> Scatter { get; }

    /// <summary>How many figures it was tuned on; 0 where the mill is not tuned.</summary>
    public int Figures { get; }

    /// <summary>Whether anything was measured.</summary>
    public bool IsTuned => Figures > 0;

    internal Vector<double> Values { get; }

    internal Matrix<double> Covariance { get; }

    internal Matrix<double> Prior { get; }

    /// <summary>A mill of which nothing was measured.</summary>
    public static MillTuning None(FlowSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var keys = TunePrior.Keys(sheet);
        var prior = TunePrior.Covariance(sheet, keys);
        return new MillTuning(keys, Vector<double>.Build.Dense(keys.Count), prior, prior, new Dictionary<FigureKind, double>(), 0);
    }

    /// <summary>How far figures of a kind scatter, 1 or more.</summary>
    public double ScatterOf(FigureKind kind) => Scatter.GetValueOrDefault(kind, 1);

    /// <summary>A factor found, its standard uncertainty as a share, and that before data.</summary>
    public (double Factor, double Uncertainty, double Before) Of(TuneKey key)
    {
        var i = Keys.ToList().IndexOf(key);
        return i < 0 ? throw new ArgumentOutOfRangeException(nameof(key), key, "is not among what can be found of this mill") : (Math.Exp(Values[i]), Math.Sqrt(Covariance[i, i]), Math.Sqrt(Prior[i, i]));
    }
}
