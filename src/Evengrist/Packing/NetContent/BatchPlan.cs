using MathNet.Numerics.Distributions;

namespace Evengrist.Packing.NetContent;

/// <summary>
/// How a batch is tested in the European Union: packages below T1 are counted in one or two samples, and the mean is held against the label. Directive 76/211/EEC, Annex II, and the factors of UK SI 2006/659, schedule 2 [read]. Model: docs/model/net-content.md.
/// </summary>
/// <param name="First">n of the first sample, whose mean is judged.</param>
/// <param name="FirstAccept">Inadequate packages up to which the batch is accepted at once.</param>
/// <param name="FirstReject">Inadequate packages from which on it is rejected at once.</param>
/// <param name="Second">n of the second sample, taken in between; 0 where there is none.</param>
/// <param name="Accept">Inadequate packages of both up to which it is accepted; from the next it is rejected.</param>
/// <param name="Factor">k: the mean may lie k of the sample's standard deviations below the label.</param>
public sealed record BatchPlan(int First, int FirstAccept, int FirstReject, int Second, int Accept, double Factor)
{
    /// <summary>Smallest batch that is sampled; smaller ones are weighed whole. Largest that counts as one.</summary>
    public const int LeastBatch = 100, MostBatch = 10_000;

    /// <summary>The plan where testing spoils the package: of any batch 20.</summary>
    public static BatchPlan Destructive { get; } = new(20, 1, 2, 0, 1, 0.640);

    /// <summary>The plan of a batch where testing spoils nothing.</summary>
    /// <param name="batch">Packages in the batch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The batch is smaller or larger than a plan is stated for.</exception>
    public static BatchPlan For(int batch) => batch switch
    {
        < LeastBatch or > MostBatch => throw new ArgumentOutOfRangeException(nameof(batch), batch, $"A batch that is sampled has {LeastBatch} to {MostBatch} packages."),
        <= 500 => new(30, 1, 3, 30, 4, 0.503),
        <= 3200 => new(50, 2, 5, 50, 6, 0.379),
        _ => new(80, 3, 7, 80, 8, MeanFactor(80)),
    };

    /// <summary>k to all its figures: t(0.995; n − 1)/√n.</summary>
    /// <param name="size">n, at least 2.</param>
    public static double MeanFactor(int size) => StudentT.InvCDF(0, 1, size - 1, 0.995) / Math.Sqrt(size);

    /// <summary>Chance that the count of inadequate packages accepts a large batch.</summary>
    /// <param name="share">Share of inadequate packages in it, 0 to 1.</param>
    public double Chance(double share)
    {
        if (share is <= 0 or >= 1)
        {
            return share <= 0 ? 1 : 0;
        }

        var chance = Binomial.CDF(share, First, FirstAccept);
        for (var found = FirstAccept + 1; found < FirstReject; found++)
        {
            chance += Binomial.PMF(share, First, found) * Binomial.CDF(share, Second, Accept - found);
        }

        return chance;
    }

    /// <summary>Chance that the mean accepts a batch of normal weights.</summary>
    /// <param name="shift">How far their true mean lies above the label, in their standard deviations.</param>
    public double ChanceOfMean(double shift) => MeanTest.Chance(First, MeanFactor(First), shift);
}
