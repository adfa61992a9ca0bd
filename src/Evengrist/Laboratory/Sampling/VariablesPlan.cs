using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Sampling;

/// <summary>A plan by variables against one limit: of n measured, the lot is accepted where the limit lies at least k standard deviations from the mean. For nearly normal values. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="Size">n.</param>
/// <param name="Factor">k.</param>
/// <param name="IsSigmaKnown">Whether the standard deviation is known beforehand; else it is that of the n.</param>
public sealed record VariablesPlan(int Size, double Factor, bool IsSigmaKnown)
{
    /// <summary>The plan for two points: k = (z_α z₂ + z_β z₁)/(z_α + z_β), n = ((z_α + z_β)/(z₁ − z₂))², times 1 + k²/2 where the standard deviation is not known, to the next whole number [from memory].</summary>
    /// <param name="points">Both points, as shares beyond the limit.</param>
    /// <param name="isSigmaKnown">Whether the standard deviation is known.</param>
    public static VariablesPlan For(TwoPoints points, bool isSigmaKnown)
    {
        ArgumentNullException.ThrowIfNull(points);
        points.Check();
        var (alpha, beta) = (Z(points.SellersRisk), Z(points.BuyersRisk));
        var (good, bad) = (Z(points.GoodShare), Z(points.BadShare));
        var k = ((alpha * bad) + (beta * good)) / (alpha + beta);
        var n = Math.Pow((alpha + beta) / (good - bad), 2) * (isSigmaKnown ? 1 : 1 + (k * k / 2));
        return new((int)Math.Ceiling(n - 1e-9), k, isSigmaKnown);
    }

    /// <summary>Chance to accept: Φ(√n (z_p − k)), with √(n/(1 + k²/2)) in place of √n where the standard deviation is not known [from memory; an approximation there].</summary>
    /// <param name="share">Share beyond the limit, 0 to 1.</param>
    public double Chance(double share) => share <= 0 ? 1 : share >= 1 ? 0 : Normal.CDF(0, 1, Math.Sqrt(Size / (IsSigmaKnown ? 1 : 1 + (Factor * Factor / 2))) * (Z(share) - Factor));

    // The quantile above which a share lies.
    private static double Z(double share) => -Normal.InvCDF(0, 1, share);
}
