using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Charts;

/// <summary>How many values pass on average until a chart signals, for normal values of standard deviation 1 whose mean lies a shift off. Model: docs/model/control-charts.md.</summary>
/// <remarks>The integral equation of the mean run length, solved at the nodes of a Gauss-Legendre rule; two-sided sums by 1/L = 1/L⁺ + 1/L⁻ [from memory].</remarks>
public static class RunLength
{
    private const int Nodes = 60;

    /// <summary>Of single values with limits at a number of standard deviations.</summary>
    public static double OfIndividuals(double shift, double width = 3) => 1 / (Normal.CDF(0, 1, -width - shift) + Normal.CDF(0, 1, shift - width));

    /// <summary>Of a cumulative sum on both sides.</summary>
    /// <param name="shift">The shift, in standard deviations.</param>
    /// <param name="allowance">k, in standard deviations, above 0.</param>
    /// <param name="limit">h, in standard deviations, above 0.</param>
    public static double OfCusum(double shift, double allowance, double limit) => 1 / ((1 / OfCusumAbove(shift, allowance, limit)) + (1 / OfCusumAbove(-shift, allowance, limit)));

    /// <summary>Of a cumulative sum above alone.</summary>
    /// <inheritdoc cref="OfCusum"/>
    public static double OfCusumAbove(double shift, double allowance, double limit)
    {
        // L(s) = 1 + L(0) Φ(k − s − δ) + ∫₀ʰ L(x) φ(x + k − s − δ) dx; the first unknown is L(0).
        var rule = new GaussLegendreRule(0, limit, Nodes);
        var system = Matrix<double>.Build.DenseIdentity(Nodes + 1);
        for (var i = 0; i <= Nodes; i++)
        {
            var s = i == 0 ? 0 : rule.GetAbscissa(i - 1);
            system[i, 0] -= Normal.CDF(0, 1, allowance - s - shift);
            for (var j = 0; j < Nodes; j++)
            {
                system[i, j + 1] -= rule.GetWeight(j) * Normal.PDF(0, 1, rule.GetAbscissa(j) + allowance - s - shift);
            }
        }

        return system.Solve(Vector<double>.Build.Dense(Nodes + 1, 1))[0];
    }

    /// <summary>Of an exponentially weighted moving mean with steady limits, begun at the target.</summary>
    /// <param name="shift">The shift, in standard deviations.</param>
    /// <param name="weight">λ, above 0 to 1.</param>
    /// <param name="width">L, in standard deviations of the moving mean, above 0.</param>
    public static double OfEwma(double shift, double weight, double width)
    {
        // L(z) = 1 + 1/λ ∫ L(x) φ((x − (1 − λ) z)/λ − δ) dx over the limits.
        var half = width * Math.Sqrt(weight / (2 - weight));
        var rule = new GaussLegendreRule(-half, half, Nodes);
        double Kernel(double x, double from) => Normal.PDF(0, 1, ((x - ((1 - weight) * from)) / weight) - shift) / weight;
        var system = Matrix<double>.Build.Dense(Nodes, Nodes, (i, j) => (i == j ? 1 : 0) - (rule.GetWeight(j) * Kernel(rule.GetAbscissa(j), rule.GetAbscissa(i))));
        var lengths = system.Solve(Vector<double>.Build.Dense(Nodes, 1));
        return 1 + Enumerable.Range(0, Nodes).Sum(j => rule.GetWeight(j) * lengths[j] * Kernel(rule.GetAbscissa(j), 0));
    }
}
