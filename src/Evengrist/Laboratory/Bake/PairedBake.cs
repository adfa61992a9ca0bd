using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Bake;

/// <summary>A trial flour against the control of the same session, pair by pair.</summary>
/// <param name="Mean">Mean of trial less control, in the unit of the measure.</param>
/// <param name="Deviation">Standard deviation of the differences.</param>
/// <param name="T">Student's t; null where the differences are all alike.</param>
/// <param name="P">Two-sided; null likewise.</param>
/// <param name="Lower">Lower end of the 95 % interval of the mean.</param>
/// <param name="Upper">Upper end.</param>
/// <param name="SignedRankP">Two-sided, of the signed ranks: normal approximation with ties and half a step; null where fewer than 6 differences are not 0.</param>
public sealed record PairedBake(double Mean, double Deviation, double? T, double? P, double Lower, double Upper, double? SignedRankP)
{
    private const int LeastForRanks = 6;

    /// <summary>Judges pairs.</summary>
    /// <param name="control">Control, one of each session, 2 or more.</param>
    /// <param name="trial">Trial, in the same order.</param>
    /// <exception cref="ArgumentException">The lists differ in length or are too short.</exception>
    public static PairedBake Of(IReadOnlyList<double> control, IReadOnlyList<double> trial)
    {
        ArgumentNullException.ThrowIfNull(control);
        ArgumentNullException.ThrowIfNull(trial);
        if (control.Count != trial.Count || control.Count < 2)
        {
            throw new ArgumentException("Two pairs or more are needed, a control for each trial.", nameof(trial));
        }

        double[] differences = [.. trial.Zip(control, (t, c) => t - c)];
        var (n, mean) = (differences.Length, differences.Average());
        var s = Math.Sqrt(differences.Sum(d => (d - mean) * (d - mean)) / (n - 1));
        var half = StudentT.InvCDF(0, 1, n - 1, 0.975) * s / Math.Sqrt(n);
        double? t = s > 0 ? mean / (s / Math.Sqrt(n)) : null;
        return new(mean, s, t, t is { } found ? 2 * StudentT.CDF(0, 1, n - 1, -Math.Abs(found)) : null, mean - half, mean + half, Ranks([.. differences.Where(d => d != 0)]));
    }

    private static double? Ranks(double[] differences)
    {
        var n = differences.Length;
        if (n < LeastForRanks)
        {
            return null;
        }

        var tied = differences.GroupBy(Math.Abs).OrderBy(g => g.Key).Select(g => g.ToArray()).ToArray();
        double above = 0, ties = 0;
        var first = 1;
        foreach (var group in tied)
        {
            var (count, rank) = (group.Length, first + ((group.Length - 1) / 2.0));
            above += rank * group.Count(d => d > 0);
            ties += ((double)count * count * count) - count;
            first += count;
        }

        var off = Math.Max(0, Math.Abs(above - (n * (n + 1) / 4.0)) - 0.5);
        return Math.Min(1, 2 * Normal.CDF(0, 1, -off / Math.Sqrt((n * (n + 1) * ((2 * n) + 1) / 24.0) - (ties / 48))));
    }
}
