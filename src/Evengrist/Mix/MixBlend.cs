using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix;

/// <summary>What comes of shares: mean and uncertainty of a property on the scale on which it averages, and back from it. Equations: docs/model/mix.md.</summary>
public static class MixBlend
{
    /// <summary>A property of the wheat mix; null where a bin that is drawn has no value.</summary>
    /// <param name="parts">Bins with their shares; those at 0 do not count.</param>
    /// <param name="what">A property with a rule.</param>
    /// <param name="basis">The basis wanted; default where the property has none.</param>
    /// <exception cref="ArgumentException">The property has no rule.</exception>
    public static Predicted? WheatOf(IReadOnlyList<(MixBin Bin, double Share)> parts, Property what, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var rule = BlendRules.Of(what) ?? throw new ArgumentException($"There is no rule for how {what.Words()} blends.", nameof(what));
        var drawn = parts.Where(p => p.Share > 0).ToArray();
        if (drawn.Length == 0 || drawn.Any(p => !p.Bin.Values.ContainsKey(what)))
        {
            return null;
        }

        double weight = 0, sum = 0, own = 0;
        var instruments = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (bin, share) in drawn)
        {
            var value = bin.Values[what];
            var w = share * (rule.Weight == BlendWeight.DryMatter ? bin.DryShare : 1);
            var toDry = Factor(value.Basis);
            var slope = rule.SlopeAt(value.Value) * toDry;
            weight += w;
            sum += w * rule.OnScale(value.Value) * toDry;
            own += Square(w * slope * value.OwnUncertainty);
            instruments[value.Instrument] = instruments.GetValueOrDefault(value.Instrument) + (w * slope * value.InstrumentUncertainty);
        }

        // What is carried by the solids is summed dry, so that a mean comes back on any basis.
        var toBasis = 1 / Factor(basis);
        var mean = rule.FromScale(sum / weight * toBasis);
        var perUnit = Math.Abs(rule.SlopeAt(mean)) / toBasis * weight;
        var (o, i) = (Math.Sqrt(own) / perUnit, Math.Sqrt(instruments.Values.Sum(Square)) / perUnit);
        return new Predicted(what, LimitOn.Wheat, mean, basis, Math.Sqrt((o * o) + (i * i)), o, i, 0);
    }

    /// <summary>What the flour is expected to be for a wheat: the relation's line, its uncertainty and the wheat's together.</summary>
    public static Predicted FlourOf(Predicted wheat, FlourRelation relation)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(relation);
        var slope = Math.Abs(relation.Slope);
        return new Predicted(
            relation.What, LimitOn.Flour, relation.FlourOf(wheat.Value), relation.FlourBasis, Math.Sqrt(Square(slope * wheat.StandardUncertainty) + Square(relation.Uncertainty)),
            slope * wheat.OwnPart, slope * wheat.InstrumentPart, relation.Uncertainty);
    }

    /// <summary>What is said of each relation of flour to wheat where the mix lies outside what it was seen to hold for.</summary>
    public static IEnumerable<string> Beyond(IReadOnlyList<(MixBin Bin, double Share)> parts, IEnumerable<FlourRelation> relations) =>
        relations.Select(r => WheatOf(parts, r.What, r.WheatBasis) is { } wheat ? r.Beyond(wheat.Value) : null).OfType<string>();

    /// <summary>100/(100 − basis): a share of solids on a basis times this is the share of the dry matter; 1 without a basis.</summary>
    public static double Factor(Basis basis) => basis.IsStated ? basis.ToDry : 1;

    private static double Square(double x) => x * x;
}
