using MathNet.Numerics.Distributions;

namespace Evengrist.Intake.Sampling;

/// <summary>The chance that a mean of loads, each from the same lognormal, is at most a value.</summary>
internal static class CompositeChance
{
    private const int Cells = 400;

    // Contents are at least 0, so only the part below the value matters: cells of equal width, each load's chance put at the middle of its cell.
    public static double AtMost(LoadPrior prior, IReadOnlyList<double> shares, double value)
    {
        var width = value / Cells;
        double[] sum = [1.0];
        for (var i = 0; i < shares.Count; i++)
        {
            sum = Add(sum, CellsOf(prior, shares[i], width));
        }

        // n loads put in cells with indices adding to j lie at (j + n/2) widths.
        var last = Cells - shares.Count / 2.0;
        return sum.Select((chance, j) => chance * Math.Clamp(last - j + 0.5, 0, 1)).Sum();
    }

    private static double[] CellsOf(LoadPrior prior, double share, double width) =>
        [.. Enumerable.Range(0, Cells + 1).Select(j => Below(prior, (j + 1) * width / share) - Below(prior, j * width / share))];

    private static double Below(LoadPrior prior, double content) => content <= 0 ? 0 : Normal.CDF(0, 1, prior.ScoreOf(content));

    private static double[] Add(double[] left, double[] right)
    {
        var sum = new double[Cells + 1];
        for (var i = 0; i < left.Length; i++)
        {
            for (var j = 0; j < right.Length && i + j < sum.Length; j++)
            {
                sum[i + j] += left[i] * right[j];
            }
        }

        return sum;
    }
}
