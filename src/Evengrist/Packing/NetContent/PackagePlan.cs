using MathNet.Numerics.Distributions;

namespace Evengrist.Packing.NetContent;

/// <summary>How many packages of a lot are weighed in the United States, and what is allowed: NIST Handbook 133, category A, from memory; the factors follow from the t distribution. Model: docs/model/net-content.md.</summary>
/// <param name="Size">n, packages weighed.</param>
/// <param name="Factor">Sample correction factor: times s it is the sample error limit.</param>
/// <param name="Allowed">Packages that may be short by more than the allowed variation.</param>
public sealed record PackagePlan(int Size, double Factor, int Allowed)
{
    /// <summary>Smallest and largest lot a plan is stated for.</summary>
    public const int LeastLot = 2, MostLot = 10_000_000;

    // As printed: to two or three figures; t(0.975; n − 1)/√n gives them unrounded.
    private static readonly double[] OfWholeLots = [8.985, 2.484, 1.591, 1.241, 1.050, 0.925, 0.836, 0.769, 0.715, 0.672];

    /// <summary>The plan for a lot.</summary>
    /// <param name="lot">Packages in the lot, at least <see cref="LeastLot"/>; lots of up to 11 are weighed whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lot is smaller or larger than a plan is stated for.</exception>
    public static PackagePlan For(int lot) => lot switch
    {
        < LeastLot or > MostLot => throw new ArgumentOutOfRangeException(nameof(lot), lot, $"A lot has {LeastLot} to {MostLot} packages."),
        <= 11 => new(lot, OfWholeLots[lot - LeastLot], 0),
        <= 250 => new(12, 0.635, 0),
        <= 3200 => new(24, 0.422, 0),
        _ => new(48, 0.291, 1),
    };

    /// <summary>The factor to all its figures: t(0.975; n − 1)/√n.</summary>
    /// <param name="size">n, at least 2.</param>
    public static double Unrounded(int size) => StudentT.InvCDF(0, 1, size - 1, 0.975) / Math.Sqrt(size);

    /// <summary>
    /// Chance that the average test passes: the mean of n is not below the label by more than the factor times s. With W = s/σ it is the mean of Φ(√n (factor · W + shift)) over W, the non-central t distribution.
    /// </summary>
    /// <param name="shift">How far the packages' true mean lies above the label, in their standard deviations; negative where they are short.</param>
    public double Chance(double shift) => MeanTest.Chance(Size, Unrounded(Size), shift);
}
