using System.Globalization;
using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Sampling;

/// <summary>Edge doubt for what was read on a load: at every edge of its contract's scales and between the house's bands near a reading.</summary>
/// <remarks>
/// The standard deviation is the one that stands on the reading (sampling included where it was known); where none does, the site's own
/// spread of the property, with its probes. Where neither is known, no chance is told. Model: docs/model/sampling.md.
/// </remarks>
public static class LoadEdges
{
    /// <summary>Readings set against their edges; those without an edge within reach are there with none.</summary>
    /// <param name="findings">What was read.</param>
    /// <param name="terms">The contract; null for none.</param>
    /// <param name="house">The house class of the wheat; null for none.</param>
    /// <param name="policy">The site's policy.</param>
    /// <param name="probes">Probes in the sample; null where not recorded.</param>
    public static IReadOnlyList<ReadingDoubts> Of(IReadOnlyList<Finding> findings, ContractTerms? terms, HouseClass? house, SamplingPolicy policy, int? probes = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(policy);
        var number = probes ?? policy.UsualProbes;
        return [.. (terms?.Scales ?? []).SelectMany(s => findings.Where(f => f.What == s.Factor).Take(1).Select(f => OnScale(f, s, terms!.Durum, policy, number))),
            .. (house?.Limits ?? []).SelectMany(row => findings.Where(f => f.What == row.Factor && f.Unit == row.Unit).Take(1).Select(f => OnBands(f, house!, row, policy, number)))];
    }

    private static ReadingDoubts OnScale(Finding finding, ContractScale scale, bool durum, SamplingPolicy policy, int probes)
    {
        var (value, slope) = ScaleLine.Carried(finding, scale, durum);
        var reach = (decimal)(3 * (Spread(finding, policy, probes)?.Whole ?? 0)) * slope;
        return Doubts(finding, value, slope, scale.Unit, scale.Basis, $"scale {scale.Title}", ScaleEdges.Near(scale, value, reach), policy, probes);
    }

    private static ReadingDoubts OnBands(Finding finding, HouseClass house, HouseLimit row, SamplingPolicy policy, int probes)
    {
        var slope = row.Basis.IsStated && finding.Basis.IsStated ? finding.Basis.Restated(1m, row.Basis) : 1m;
        return Doubts(finding, finding.Value * slope, slope, row.Unit, row.Basis, string.Create(CultureInfo.InvariantCulture, $"house class {house.Code} v{house.Version}"), HouseEdges.Of(house, row), policy, probes);
    }

    private static ReadingDoubts Doubts(
        Finding finding, decimal value, decimal slope, string unit, Quantities.Basis basis, string against, IReadOnlyList<Edge> edges, SamplingPolicy policy, int probes)
    {
        if (Spread(finding, policy, probes) is not { Whole: > 0 } spread)
        {
            return new ReadingDoubts(finding, value, unit, basis, null, "no uncertainty stands on the reading, and the site has stated none", against, []);
        }

        var whole = spread.Whole * (double)slope;
        var doubts = EdgeModel.Doubts(new EdgeSpec((double)value, whole, edges) { SureFrom = policy.SureFrom, Probes = probes, FromProbes = spread.FromProbes * (double)slope });
        return new ReadingDoubts(finding, value, unit, basis, whole, spread.How, against, doubts);
    }

    private static (double Whole, double? FromProbes, string How)? Spread(Finding finding, SamplingPolicy policy, int probes)
    {
        var site = policy.SpreadOf(finding.What);
        var fromProbes = site?.BetweenProbes / Math.Sqrt(probes);
        return finding.StandardUncertainty is { } own
            ? ((double)own, fromProbes <= (double)own ? fromProbes : null, "as it stands on the reading")
            : site is null ? null
            : (VarianceModel.Of(site.AsSpec, new SampleSizes(probes)).StandardDeviation, fromProbes, string.Create(CultureInfo.InvariantCulture, $"the site's own spread, {probes} probes"));
    }
}
