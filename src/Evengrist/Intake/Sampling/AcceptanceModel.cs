using MathNet.Numerics.Distributions;

namespace Evengrist.Intake.Sampling;

/// <summary>How likely a load is accepted at a limit, and what that risks for buyer and seller.</summary>
/// <remarks>The error of the result is taken as normal. Guard bands and rules to test again are policy: both risks are shown. Model: docs/model/sampling.md.</remarks>
public static class AcceptanceModel
{
    /// <summary>Chance, 0 to 1, that a load of a true concentration is accepted: Φ((L − C)/s(C)).</summary>
    /// <param name="spec">The rule.</param>
    /// <param name="trueMilligrams">C, mg/kg, at least 0; at 0 the load is accepted.</param>
    /// <exception cref="ArgumentException">A size or number cannot be.</exception>
    public static double Accepted(AcceptanceSpec spec, double trueMilligrams)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var sd = Spread(spec, trueMilligrams);
        return sd > 0 ? Normal.CDF(0, 1, (spec.AcceptAtMilligrams - trueMilligrams) / sd) : trueMilligrams <= spec.AcceptAtMilligrams ? 1 : 0;
    }

    /// <summary>The buyer's risk: a load above the limit is accepted.</summary>
    public static double BuyersRisk(AcceptanceSpec spec, double trueMilligrams) => Accepted(spec, trueMilligrams);

    /// <summary>The seller's risk: a load within the limit is not accepted.</summary>
    public static double SellersRisk(AcceptanceSpec spec, double trueMilligrams) => 1 - Accepted(spec, trueMilligrams);

    /// <summary>The highest L that accepts a load at the limit with no more than the buyer's risk: limit − z·s(limit); null where that is not above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The risk is not above 0 and at most 0.5.</exception>
    public static double? GuardedLevel(AcceptanceSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.BuyersRisk is not (> 0 and <= 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(spec), spec.BuyersRisk, "A risk to be kept is above 0 and at most 0.5.");
        }

        var level = spec.LimitMilligrams + Normal.InvCDF(0, 1, spec.BuyersRisk) * Spread(spec, spec.LimitMilligrams);
        return level > 0 ? level : null;
    }

    private static double Spread(AcceptanceSpec spec, double at) => DonVariance.Of(at, spec.Sizes, spec.BetweenProbes, spec.Probes).StandardDeviation;
}
