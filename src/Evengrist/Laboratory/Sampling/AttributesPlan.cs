using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Sampling;

/// <summary>A single plan by attributes: of a lot, n are looked at, and it is accepted with up to c bad ones. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="Size">n, 1 or more.</param>
/// <param name="Accept">c, 0 or more and below n.</param>
public sealed record AttributesPlan(int Size, int Accept)
{
    /// <summary>Chance to accept a lot much larger than the sample: Σ C(n, d) pᵈ (1 − p)ⁿ⁻ᵈ up to c.</summary>
    /// <param name="share">p, share of bad ones, 0 to 1.</param>
    public double Chance(double share) => share <= 0 ? 1 : share >= 1 ? (Accept >= Size ? 1 : 0) : Binomial.CDF(share, Size, Accept);

    /// <summary>Chance to accept a lot of which the sample is a good part (above a tenth of it).</summary>
    /// <param name="lot">N, at least n.</param>
    /// <param name="bad">Bad ones in it, 0 to N.</param>
    public double ChanceOf(int lot, int bad) => bad <= Accept ? 1 : Hypergeometric.CDF(lot, bad, Size, Accept);

    /// <summary>Chance to accept where faults are counted in place of bad ones: Poisson with n · faults for each.</summary>
    /// <param name="each">Faults for each, 0 or more.</param>
    public double ChanceOfFaults(double each) => each <= 0 ? 1 : Poisson.CDF(Size * each, Accept);

    /// <summary>Share of bad ones that goes out on average, where rejected lots are sorted: p P (N − n)/N.</summary>
    /// <param name="share">p.</param>
    /// <param name="lot">N.</param>
    public double Outgoing(double share, int lot) => share * Chance(share) * (lot - Size) / lot;

    /// <summary>How many are looked at on average, where rejected lots are sorted: n + (1 − P)(N − n).</summary>
    /// <param name="share">p.</param>
    /// <param name="lot">N.</param>
    public double Inspected(double share, int lot) => Size + ((1 - Chance(share)) * (lot - Size));

    /// <summary>The share of bad ones at which the plan accepts with a chance, by halving.</summary>
    /// <param name="chance">Above 0 and below 1.</param>
    public double ShareAt(double chance)
    {
        var (least, most) = (0.0, 1.0);
        for (var round = 0; round < 60; round++)
        {
            var middle = (least + most) / 2;
            (least, most) = Chance(middle) > chance ? (middle, most) : (least, middle);
        }

        return least;
    }

    /// <summary>The smallest plan that accepts good lots and rejects bad ones as asked; null where it would take more than <see cref="MostSize"/>.</summary>
    /// <param name="points">Both points.</param>
    public static AttributesPlan? For(TwoPoints points)
    {
        ArgumentNullException.ThrowIfNull(points);
        points.Check();
        for (var accept = 0; accept < 200; accept++)
        {
            // The fewest that reject bad lots; with more, good lots are accepted less.
            var (least, most) = (accept + 1, MostSize);
            if (new AttributesPlan(most, accept).Chance(points.BadShare) > points.BuyersRisk)
            {
                return null;
            }

            while (least < most)
            {
                var middle = (least + most) / 2;
                (least, most) = new AttributesPlan(middle, accept).Chance(points.BadShare) <= points.BuyersRisk ? (least, middle) : (middle + 1, most);
            }

            if (new AttributesPlan(least, accept) is var plan && plan.Chance(points.GoodShare) >= 1 - points.SellersRisk)
            {
                return plan;
            }
        }

        return null;
    }

    /// <summary>Most that a plan may take [ours].</summary>
    public const int MostSize = 20_000;
}
