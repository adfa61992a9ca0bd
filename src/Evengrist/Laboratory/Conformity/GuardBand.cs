using MathNet.Numerics.Distributions;
using MathNet.Numerics.RootFinding;

namespace Evengrist.Laboratory.Conformity;

/// <summary>How wide a band is kept between a limit and the results that are accepted. JCGM 106:2012, formulas from memory. Model: docs/model/conformity.md.</summary>
public static class GuardBand
{
    /// <summary>The risk kept where nothing else is said: 5 %.</summary>
    public const double UsualRisk = 0.05;

    /// <summary>The narrowest band at which a value on the limit is accepted with no more than the risk: z(1 − risk)·u.</summary>
    /// <param name="uncertainty">u of what is decided by, at least 0.</param>
    /// <param name="risk">Above 0 and at most 0.5.</param>
    public static double ForBuyersRisk(double uncertainty, double risk)
    {
        Demand(risk);
        return -Normal.InvCDF(0, 1, risk) * uncertainty;
    }

    /// <summary>The widest band at which a value on the limit is turned away with no more than the risk; below 0: results beyond the limit are accepted.</summary>
    /// <param name="uncertainty">u of what is decided by, at least 0.</param>
    /// <param name="risk">Above 0 and at most 0.5.</param>
    public static double ForMillsRisk(double uncertainty, double risk) => -ForBuyersRisk(uncertainty, risk);

    /// <summary>The narrowest band that keeps the chance for a lot to be outside and accepted; null where not even the narrowest room between the limits does.</summary>
    /// <param name="lots">How the mill's lots lie, deviation above 0.</param>
    /// <param name="uncertainty">u, above 0.</param>
    /// <param name="tolerance">The limits.</param>
    /// <param name="risk">Above 0 and at most 0.5.</param>
    public static double? ForLotsAcceptedOutside(NormalBelief lots, double uncertainty, Tolerance tolerance, double risk)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        Demand(risk);
        double Over(double guard) => LotRisk.Of(lots, uncertainty, tolerance, tolerance.Within(guard)).AcceptedOutside - risk;
        var widest = tolerance is { Lower: { } low, Upper: { } high } ? Math.Min((high - low) / 2, 10 * uncertainty) : 10 * uncertainty;
        return Over(-10 * uncertainty) <= 0 ? -10 * uncertainty
            : Over(widest) > 0 ? null
            : Bisection.FindRoot(Over, -10 * uncertainty, widest, 1e-9, 200);
    }

    /// <summary>The widest band that keeps the chance for a lot to be inside and turned away; null where even results far beyond the limits accepted do not.</summary>
    /// <param name="lots">How the mill's lots lie, deviation above 0.</param>
    /// <param name="uncertainty">u, above 0.</param>
    /// <param name="tolerance">The limits.</param>
    /// <param name="risk">Above 0 and at most 0.5.</param>
    public static double? ForLotsRejectedInside(NormalBelief lots, double uncertainty, Tolerance tolerance, double risk)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        Demand(risk);
        double Over(double guard) => LotRisk.Of(lots, uncertainty, tolerance, tolerance.Within(guard)).RejectedInside - risk;
        var widest = tolerance is { Lower: { } low, Upper: { } high } ? Math.Min((high - low) / 2, 10 * uncertainty) : 10 * uncertainty;
        return Over(widest) <= 0 ? widest : Over(-10 * uncertainty) > 0 ? null : Bisection.FindRoot(Over, -10 * uncertainty, widest, 1e-9, 200);
    }

    private static void Demand(double risk)
    {
        if (!(risk is > 0 and <= 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(risk), risk, "A risk to be kept is above 0 and at most 0.5.");
        }
    }
}
