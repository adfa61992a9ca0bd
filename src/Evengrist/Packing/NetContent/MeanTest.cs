using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Evengrist.Packing.NetContent;

/// <summary>A test that passes where the mean of n weights lies at most k of their own standard deviations below the label. Model: docs/model/net-content.md.</summary>
internal static class MeanTest
{
    private const int Points = 256;

    /// <summary>Chance to pass for normal weights: the mean over W = s/σ of Φ(√n (k W + shift)); W² (n − 1) is chi-square with n − 1 degrees of freedom.</summary>
    /// <param name="size">n, at least 2.</param>
    /// <param name="factor">k, at least 0.</param>
    /// <param name="shift">True mean above the label, in standard deviations.</param>
    public static double Chance(int size, double factor, double shift)
    {
        var chi = new Chi(size - 1);
        var root = Math.Sqrt(size - 1);
        // Beyond ten standard deviations of W (about 1/√(2(n − 1))) nothing is left that a double would show.
        var spread = 10 / Math.Sqrt(2.0 * (size - 1));
        return Math.Clamp(GaussLegendreRule.Integrate(w => Normal.CDF(0, 1, Math.Sqrt(size) * ((factor * w) + shift)) * chi.Density(w * root) * root, Math.Max(0, 1 - spread), 1 + spread, Points), 0, 1);
    }
}
