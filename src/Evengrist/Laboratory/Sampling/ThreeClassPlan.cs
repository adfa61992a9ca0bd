using MathNet.Numerics;

namespace Evengrist.Laboratory.Sampling;

/// <summary>A plan with three classes, as for counts of micro-organisms: of n, none above M and up to c between m and M. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="Size">n.</param>
/// <param name="Marginal">c, most between m and M; below n.</param>
public sealed record ThreeClassPlan(int Size, int Marginal)
{
    /// <summary>Chance to accept: Σ C(n, j) pₘʲ (1 − p_d − pₘ)ⁿ⁻ʲ up to c [from memory].</summary>
    /// <param name="marginalShare">Share between m and M.</param>
    /// <param name="badShare">Share above M; together at most 1.</param>
    public double Chance(double marginalShare, double badShare)
    {
        if (!(marginalShare >= 0 && badShare >= 0 && marginalShare + badShare <= 1 + 1e-12))
        {
            throw new ArgumentOutOfRangeException(nameof(marginalShare), marginalShare, "Shares are 0 or more and together at most 1.");
        }

        var good = Math.Max(0, 1 - badShare - marginalShare);
        return Enumerable.Range(0, Math.Min(Marginal, Size) + 1).Sum(j => SpecialFunctions.Binomial(Size, j) * Math.Pow(marginalShare, j) * Math.Pow(good, Size - j));
    }
}
