using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Evengrist.Laboratory.Charts;

/// <summary>Factors of control charts for groups of a size, reckoned from the range and standard deviation of normal numbers, not read from a table. Model: docs/model/control-charts.md.</summary>
/// <remarks>d₂ and d₃ are mean and standard deviation of the range of n standard normal numbers: d₂ = ∫ 1 − Φⁿ − (1 − Φ)ⁿ dx, E R² = 2 ∬ₓ﹤ᵧ 1 − Φ(y)ⁿ − (1 − Φ(x))ⁿ + (Φ(y) − Φ(x))ⁿ dx dy. Printed tables round d₂ first.</remarks>
public sealed record ChartConstants
{
    /// <summary>Smallest and largest group.</summary>
    public const int Least = 2, Most = 50;

    private const double Edge = 9;
    private const int Nodes = 128;

    private ChartConstants(int n)
    {
        Size = n;
        D2 = GaussLegendreRule.Integrate(x => 1 - Math.Pow(Normal.CDF(0, 1, x), n) - Math.Pow(Normal.CDF(0, 1, -x), n), -Edge, Edge, Nodes);
        var square = 2 * GaussLegendreRule.Integrate(
            y => GaussLegendreRule.Integrate(x => 1 - Math.Pow(Normal.CDF(0, 1, y), n) - Math.Pow(Normal.CDF(0, 1, -x), n) + Math.Pow(Normal.CDF(0, 1, y) - Normal.CDF(0, 1, x), n), -Edge, y, Nodes), -Edge, Edge, Nodes);
        D3 = Math.Sqrt(square - (D2 * D2));
        C4 = Math.Sqrt(2.0 / (n - 1)) * Math.Exp(SpecialFunctions.GammaLn(n / 2.0) - SpecialFunctions.GammaLn((n - 1) / 2.0));
    }

    /// <summary>How many values a group has.</summary>
    public int Size { get; }

    /// <summary>Mean range over the standard deviation.</summary>
    public double D2 { get; }

    /// <summary>Standard deviation of the range over the standard deviation.</summary>
    public double D3 { get; }

    /// <summary>Mean of the groups' standard deviation over the standard deviation.</summary>
    public double C4 { get; }

    /// <summary>Half the width of a chart of means, over the mean range.</summary>
    public double A2 => 3 / (D2 * Math.Sqrt(Size));

    /// <summary>The same over the mean standard deviation of the groups.</summary>
    public double A3 => 3 / (C4 * Math.Sqrt(Size));

    /// <summary>Limits of a chart of standard deviations over their mean; the lower is not below 0.</summary>
    public (double Lower, double Upper) B => (Math.Max(0, 1 - SpreadOfS), 1 + SpreadOfS);

    /// <summary>Limits of a chart of ranges over their mean; the lower is not below 0.</summary>
    public (double Lower, double Upper) D => (Math.Max(0, 1 - (3 * D3 / D2)), 1 + (3 * D3 / D2));

    /// <summary>Half the width of a chart of single values over the mean range.</summary>
    public double E2 => 3 / D2;

    private double SpreadOfS => 3 * Math.Sqrt(1 - (C4 * C4)) / C4;

    private static readonly ChartConstants?[] Known = new ChartConstants?[Most + 1];

    /// <summary>The factors for a size of group.</summary>
    /// <param name="size">Values to a group, 2 to 50.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size lies outside.</exception>
    public static ChartConstants Of(int size)
    {
        if (size is < Least or > Most)
        {
            throw new ArgumentOutOfRangeException(nameof(size), size, $"A group has {Least} to {Most} values.");
        }

        return Known[size] ??= new ChartConstants(size);
    }
}
