using Evengrist.Mix;

namespace Evengrist.Planning.Mix;

/// <summary>Turns limits into cones over the shares. Equations: docs/model/mix.md.</summary>
internal static class Cones
{
    /// <summary>One cone for each end of each limit, in order.</summary>
    public static IReadOnlyList<(LimitEnd End, Cone Cone)> Of(MixSpec spec) =>
        [.. spec.Limits.SelectMany(l => l.Ends).Select(e => (e, Of(spec, WheatLimit.Of(e, spec.Relations))))];

    private static Cone Of(MixSpec spec, WheatLimit limit)
    {
        var (what, bins) = (limit.End.Limit.What, spec.Bins);
        var rule = BlendRules.Of(what)!;
        var up = limit.IsLeast != rule.Falls ? 1 : -1;
        var toBasis = MixBlend.Factor(limit.Basis);
        var bound = rule.OnScale(limit.Value) * toBasis;
        var (mean, own, residual) = (new double[bins.Count], new double[bins.Count], new double[bins.Count]);
        var instruments = new Dictionary<string, double[]>(StringComparer.Ordinal);
        for (var j = 0; j < bins.Count; j++)
        {
            var value = bins[j].Values[what];
            var (weight, toDry) = (rule.Weight == BlendWeight.DryMatter ? bins[j].DryShare : 1, MixBlend.Factor(value.Basis));
            var slope = rule.SlopeAt(value.Value) * toDry;
            mean[j] = up * weight * ((rule.OnScale(value.Value) * toDry) - bound);
            own[j] = weight * slope * value.OwnUncertainty;
            residual[j] = weight * rule.SlopeAt(limit.Value) * toBasis * limit.Residual;
            if (value.InstrumentUncertainty > 0)
            {
                if (!instruments.TryGetValue(value.Instrument, out var group))
                {
                    instruments.Add(value.Instrument, group = new double[bins.Count]);
                }

                group[j] = weight * slope * value.InstrumentUncertainty;
            }
        }

        return new Cone(mean, own, [.. instruments.Values, .. limit.Residual > 0 ? [residual] : Array.Empty<double[]>()], HeadroomModel.Margin(limit.End.Limit.Confidence));
    }
}
