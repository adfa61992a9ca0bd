using System.Globalization;
using Evengrist.Mix;
using Evengrist.Planning.Solving;

namespace Evengrist.Planning.Mix;

/// <summary>Finds which demands clash, and what would have to give. Page: docs/model/mix.md.</summary>
internal sealed class ClashFinder(MixSpec spec, MixSearchOptions options, CancellationToken stop)
{
    // Enough digits that the limit as it is written can be kept.
    private const int MoreDecimals = 2;

    /// <summary>The clash; null where the question without any demand has no answer either, which only a fault of ours can bring about.</summary>
    public MixClash? Find(IReadOnlyList<LeftOut> leftOut)
    {
        Demand[] all = [.. Demand.AllOf(spec)];
        return DeletionFilter.Find(all, kept => IsPossible(Without(all.Except(kept)))) is { Demands: var clash }
            ? new MixClash([.. clash.Select(d => d.Words)], [.. clash.Select(Alone).OfType<Remedy>()], Together(), leftOut) : null;
    }

    // How far one of them would have to give for the whole question to have an answer.
    private Remedy? Alone(Demand demand)
    {
        if (demand.End is { } end)
        {
            var slack = Slack(e => e == end);
            var found = new MixSearch(spec, options).Nearest(slack, stop);
            return found.IsThere ? Given(found.Shares).FirstOrDefault() : null;
        }

        return IsPossible(demand.Without(spec)) ? new Remedy(demand.Words, "left out", double.NaN) : null;
    }

    private Remedy[] Together()
    {
        var found = new MixSearch(spec, options).Nearest(Slack(_ => true), stop);
        return found.IsThere ? Given(found.Shares) : [];
    }

    // A miss by one usual step costs 1, whatever the property.
    private double[] Slack(Func<LimitEnd, bool> gives)
    {
        var ends = Cones.Of(spec);
        return [.. ends.Select(e => gives(e.End) ? e.Cone.Size / StepOf(e.End) : double.NaN)];
    }

    private double StepOf(LimitEnd end)
    {
        var limit = WheatLimit.Of(end, spec.Relations);
        var rule = BlendRules.Of(end.Limit.What)!;
        var dry = rule.Weight == BlendWeight.DryMatter ? spec.Bins.Average(b => b.DryShare) : 1;
        return rule.RelaxStep * Math.Abs(rule.SlopeAt(limit.Value)) * MixBlend.Factor(limit.Basis) * dry;
    }

    private Remedy[] Given(double[] shares)
    {
        var parts = spec.Bins.Zip(shares).ToArray();
        return [.. HeadroomModel.Of(spec, parts).Where(h => h.Spare < -1e-7 * Math.Max(1, Math.Abs(h.Limit.Value))).Select(Given)];
    }

    private static Remedy Given(Headroom missed)
    {
        var (end, rule) = (missed.Limit.End, BlendRules.Of(missed.Limit.End.Limit.What)!);
        var wheat = missed.Limit.Value + ((missed.Limit.IsLeast ? 1 : -1) * missed.Spare);
        var kept = missed.Limit.Relation is { } relation
            ? relation.FlourOf(wheat) * (end.Limit.Basis.IsStated ? MixBlend.Factor(relation.FlourBasis) / MixBlend.Factor(end.Limit.Basis) : 1)
            : wheat;
        var unit = Math.Pow(10, rule.Decimals + MoreDecimals);
        var rounded = end.IsLeast ? Math.Floor((kept * unit) + 1e-6) / unit : Math.Ceiling((kept * unit) - 1e-6) / unit;
        return new Remedy(
            end.Words, string.Create(CultureInfo.InvariantCulture, $"{(end.IsLeast ? "down" : "up")} to {rounded:0.#####} {rule.Unit}{(end.Limit.Basis.IsStated ? " " + end.Limit.Basis : "")}"),
            Math.Abs(missed.Spare) / rule.RelaxStep);
    }

    private MixSpec Without(IEnumerable<Demand> left) => left.Aggregate(spec, (s, d) => d.Without(s));

    private bool IsPossible(MixSpec asked) => new MixSearch(asked, options).IsPossible(stop);
}
