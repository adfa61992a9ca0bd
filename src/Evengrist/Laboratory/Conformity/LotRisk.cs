using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;

namespace Evengrist.Laboratory.Conformity;

/// <summary>What a rule does to all lots of a mill, before any of them is measured: the global risks of JCGM 106:2012, formulas from memory.</summary>
/// <param name="Inside">Share of lots inside the limits.</param>
/// <param name="AcceptedOutside">Chance that a lot is outside and accepted: the buyer's risk.</param>
/// <param name="RejectedInside">Chance that a lot is inside and turned away: the mill's risk.</param>
public sealed record LotRisk(double Inside, double AcceptedOutside, double RejectedInside)
{
    private const double Far = 9;
    private const int Order = 32, MostPanels = 4000;

    /// <summary>Reckons them: the distribution of lots times the chance that a lot there is accepted, integrated outside and inside the limits.</summary>
    /// <param name="lots">How the mill's lots lie, deviation above 0.</param>
    /// <param name="uncertainty">Of what is decided by, above 0.</param>
    /// <param name="tolerance">The limits.</param>
    /// <param name="acceptance">Results that are accepted.</param>
    /// <exception cref="ArgumentException">A standard deviation is not above 0.</exception>
    public static LotRisk Of(NormalBelief lots, double uncertainty, Tolerance tolerance, Tolerance acceptance)
    {
        ArgumentNullException.ThrowIfNull(lots);
        ArgumentNullException.ThrowIfNull(tolerance);
        ArgumentNullException.ThrowIfNull(acceptance);
        if (!(lots.Deviation > 0 && double.IsFinite(lots.Deviation) && uncertainty > 0 && double.IsFinite(uncertainty)))
        {
            throw new ArgumentException("The risk over all lots needs the lots' standard deviation and the uncertainty of a result, both above 0.", nameof(lots));
        }

        double Weight(double x) => Normal.PDF(lots.Mean, lots.Deviation, x);
        double Accepted(double x) => new NormalBelief(x, uncertainty).Inside(acceptance);
        var (least, most) = (lots.Mean - (Far * lots.Deviation), lots.Mean + (Far * lots.Deviation));
        var (low, high) = (Math.Clamp(tolerance.Lower ?? least, least, most), Math.Clamp(tolerance.Upper ?? most, least, most));
        var panel = Math.Min(uncertainty, lots.Deviation);
        return new LotRisk(
            lots.Inside(tolerance),
            Integral(x => Weight(x) * Accepted(x), least, low, panel) + Integral(x => Weight(x) * Accepted(x), high, most, panel),
            Integral(x => Weight(x) * (1 - Accepted(x)), low, high, panel));
    }

    private static double Integral(Func<double, double> of, double from, double to, double panel)
    {
        var panels = (int)Math.Clamp(Math.Ceiling((to - from) / panel), 1, MostPanels);
        return to <= from ? 0 : Enumerable.Range(0, panels).Sum(i => GaussLegendreRule.Integrate(of, from + ((to - from) * i / panels), from + ((to - from) * (i + 1) / panels), Order));
    }
}
