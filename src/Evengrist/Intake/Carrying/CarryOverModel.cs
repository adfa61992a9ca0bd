using Evengrist.Quantities;

namespace Evengrist.Intake.Carrying;

/// <summary>Carry-over of the last grain through pit and leg into the next load.</summary>
/// <remarks>
/// c(N) = c₀·exp(−N/λ) after N tonnes, so that the first N tonnes hold c₀·λ·(1 − exp(−N/λ)) tonnes of the last grain and the share falls below t
/// after λ·ln(c₀/t) tonnes; λ is scaled by the site's boot residue over the published 120 kg. Model: docs/model/carry-over.md.
/// </remarks>
public static class CarryOverModel
{
    /// <summary>Share of the last grain, fraction, in what passes after so many tonnes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than nothing has passed.</exception>
    public static double ShareAfter(double tonnes, CarryOverSpec spec)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(tonnes);
        Demand(spec);
        return spec.FirstShare * Math.Exp(-tonnes / spec.SiteLength);
    }

    /// <summary>What a load picks up.</summary>
    /// <param name="load">Mass of the load.</param>
    /// <param name="spec">The route.</param>
    /// <param name="threshold">The share asked about, per cent, above 0.</param>
    /// <exception cref="ArgumentException">The route cannot be.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The load or the threshold is not above 0.</exception>
    public static CarryOverOutcome Of(Mass load, CarryOverSpec spec, double threshold = 0.1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(load.Grams, 0, nameof(load));
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(threshold, 0);
        Demand(spec);
        var tonnes = (double)load.Tonnes;
        var carried = 1000 * spec.FirstShare * spec.SiteLength * (1 - Math.Exp(-tonnes / spec.SiteLength));
        var until = Math.Max(0, spec.SiteLength * Math.Log(100 * spec.FirstShare / threshold));
        Figure[] inputs =
        [
            Figure.Seen("load", load.Tonnes, "t"),
            Figure.Reckoned("first share", (decimal)(100 * spec.FirstShare), "%", 1, new("by default, or as the site says", [], Source(spec))),
            Figure.Reckoned("length", (decimal)spec.SiteLength, "t", 3, new("published length × boot residue / 120 kg", [], Source(spec))),
        ];
        return new(
            Figure.Reckoned("carried over", (decimal)carried, "kg", 1, new("c₀·λ·(1 − exp(−N/λ))", inputs, Source(spec))),
            Figure.Reckoned("share of the load", (decimal)(carried / 10 / tonnes), "%", 3, new("carried over / load", inputs, Source(spec))),
            Figure.Reckoned($"below {threshold} % after", (decimal)until, "t", 2, new("λ·ln(c₀/threshold)", inputs, Source(spec))),
            threshold);
    }

    private static string Source(CarryOverSpec spec) => spec.IsMeasured
        ? "residue measured on this site; shape from Trans. ASAE 46(6):1625-1631"
        : "not calibrated on this site: upper bounds published for corn, Trans. ASAE 46(6):1625-1631";

    private static void Demand(CarryOverSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }
    }
}
