using MathNet.Numerics.Distributions;

namespace Evengrist.Mix;

/// <summary>Distance of shares to each end of each limit. Page: docs/model/mix.md.</summary>
public static class HeadroomModel
{
    private const double Rounding = 1e-9;

    /// <summary>Every end of every limit, in order; an end whose property is not known for a bin that is drawn is left out.</summary>
    public static IReadOnlyList<Headroom> Of(MixSpec spec, IReadOnlyList<(MixBin Bin, double Share)> parts)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return [.. spec.Limits.SelectMany(l => l.Ends).Select(e => Of(WheatLimit.Of(e, spec.Relations), parts)).OfType<Headroom>()];
    }

    /// <summary>The number of standard uncertainties by which the mean has to keep an end with a confidence: Φ⁻¹(confidence).</summary>
    public static double Margin(double? confidence) => confidence is { } sure and > 0.5 ? Normal.InvCDF(0, 1, sure) : 0;

    private static Headroom? Of(WheatLimit limit, IReadOnlyList<(MixBin Bin, double Share)> parts)
    {
        if (MixBlend.WheatOf(parts, limit.End.Limit.What, limit.Basis) is not { } wheat)
        {
            return null;
        }

        var rule = BlendRules.Of(limit.End.Limit.What)!;
        var side = limit.IsLeast ? 1 : -1;

        // The uncertainty is that on the scale, carried to the unit of the value at the mean; the relation's is carried at the limit, as the solver has it.
        var scaled = rule.OnScale(wheat.Value);
        var own = wheat.StandardUncertainty * Math.Abs(rule.SlopeAt(wheat.Value));
        var residual = limit.Residual * Math.Abs(rule.SlopeAt(limit.Value));
        var uncertainty = Math.Sqrt((own * own) + (residual * residual));
        var up = side * (rule.Falls ? -1 : 1);
        var margin = HeadroomModel.Margin(limit.End.Limit.Confidence) * uncertainty;
        var sure = scaled - (up * margin);
        var z = up * (scaled - rule.OnScale(limit.Value));
        var worst = rule.Scale != BlendScale.Itself && sure <= 0 ? double.PositiveInfinity : rule.FromScale(sure);
        return new Headroom(limit, wheat, side * (wheat.Value - limit.Value), side * (worst - limit.Value), Chance(z, uncertainty, Rounding * Math.Max(1, Math.Abs(scaled))));
    }

    // An uncertainty smaller than the rounding of the sums is none: it must not make a limit kept to the last digit an even chance.
    private static double Chance(double above, double uncertainty, double rounding) =>
        uncertainty > rounding ? Normal.CDF(0, 1, above / uncertainty) : above >= -rounding ? 1 : 0;
}
