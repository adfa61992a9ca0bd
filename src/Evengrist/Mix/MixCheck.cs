using System.Globalization;
using Evengrist.Ledger;
using MathNet.Numerics.Distributions;

namespace Evengrist.Mix;

/// <summary>Judges shares against what was wanted, by its own arithmetic: it shares no code with what builds and solves the problem. Page: docs/model/mix.md.</summary>
public static class MixCheck
{
    private const double Tolerance = 1e-6;

    /// <summary>Everything that the shares break by more than a millionth, each a sentence; empty where they keep all.</summary>
    /// <param name="spec">What was wanted; refused bins taken out.</param>
    /// <param name="shares">A share for each bin, in order.</param>
    public static IReadOnlyList<string> Broken(MixSpec spec, IReadOnlyList<double> shares)
    {
        ArgumentNullException.ThrowIfNull(spec);
        ArgumentNullException.ThrowIfNull(shares);
        if (shares.Count != spec.Bins.Count || shares.Any(s => !double.IsFinite(s)))
        {
            return ["There is not a number for each bin."];
        }

        return [.. Sums(spec, shares), .. Gates(spec, shares), .. spec.Limits.SelectMany(l => Limit(spec, l, shares))];
    }

    private static IEnumerable<string> Sums(MixSpec spec, IReadOnlyList<double> shares)
    {
        if (Math.Abs(shares.Sum() - 1) > Tolerance)
        {
            yield return Say($"The shares sum to {shares.Sum()}.");
        }

        foreach (var part in spec.Classes)
        {
            var share = Enumerable.Range(0, shares.Count).Where(i => string.Equals(spec.Bins[i].Class, part.Class, StringComparison.OrdinalIgnoreCase)).Sum(i => shares[i]);
            if (share < part.Least - Tolerance || share > part.Most + Tolerance)
            {
                yield return Say($"{part.Class} has a share of {share}, outside {part.Least} to {part.Most}.");
            }
        }
    }

    private static IEnumerable<string> Gates(MixSpec spec, IReadOnlyList<double> shares)
    {
        var rate = spec.RateTonnesPerHour;
        for (var i = 0; i < shares.Count; i++)
        {
            var (bin, share) = (spec.Bins[i], shares[i]);
            if (share < Math.Max(0, bin.LeastShare) - Tolerance || share > bin.MostShare + Tolerance || bin.LockedShare is { } locked && Math.Abs(share - locked) > Tolerance)
            {
                yield return Say($"{bin.Code} has a share of {share}, which its own limits do not allow.");
            }

            if (rate is { } t && (share * t > spec.Gates.MostTonnesPerHour * (1 + Tolerance) || share * t * spec.Hours > bin.Tonnes * (1 + Tolerance) + Tolerance))
            {
                yield return Say($"{bin.Code} cannot give {share * t} t/h.");
            }

            // A gate that was locked stays as it was set, whatever an open one needs.
            if (share > Tolerance && bin.LockedShare is null && (share < spec.Gates.LeastOpenShare - Tolerance || share * rate < spec.Gates.LeastTonnesPerHour * (1 - Tolerance)))
            {
                yield return Say($"The gate of {bin.Code} is open by less than it can be.");
            }

            var steps = spec.Gates.StepPercent is { } p ? share * 100 / p : spec.Gates.StepTonnesPerHour is { } s ? share * rate!.Value / s : Math.Round(share);
            if ((spec.Gates.StepPercent is not null || spec.Gates.StepTonnesPerHour is not null) && Math.Abs(steps - Math.Round(steps)) > Tolerance)
            {
                yield return Say($"The gate of {bin.Code} stands between two steps.");
            }
        }

        if (spec.Gates.MostGates is { } most && shares.Count(s => s > Tolerance) is var open && open > most)
        {
            yield return Say($"{open} gates are open, more than {most}.");
        }
    }

    private static IEnumerable<string> Limit(MixSpec spec, MixLimit limit, IReadOnlyList<double> shares)
    {
        var relation = limit.On == LimitOn.Flour ? spec.Relations.First(r => r.What == limit.What) : null;
        var z = limit.Confidence is { } sure and > 0.5 ? Normal.InvCDF(0, 1, sure) : 0;
        foreach (var (bound, least) in new[] { (limit.Least, true), (limit.Most, false) })
        {
            if (bound is { } value && !Keeps(spec, limit, relation, value, least, z, shares))
            {
                yield return Say($"{limit.What.Words()} of the {(relation is null ? "wheat" : "flour")} is not kept at {(least ? "least" : "most")} {value}.");
            }
        }
    }

    private static bool Keeps(MixSpec spec, MixLimit limit, FlourRelation? relation, double value, bool least, double z, IReadOnlyList<double> shares)
    {
        var dry = limit.What.NeedsBasis();
        double weights = 0, mean = 0, variance = 0;
        var shared = new Dictionary<string, double>();
        for (var i = 0; i < shares.Count; i++)
        {
            if (shares[i] <= 0)
            {
                continue;
            }

            var bin = spec.Bins[i];
            var read = bin.Values[limit.What];
            var weight = dry ? shares[i] * (100 - bin.MoisturePercent) / 100 : shares[i];
            var dried = read.Basis.IsStated ? 100.0 / (100.0 - (double)read.Basis.MoisturePercent) : 1;
            var (scaled, slope) = Scaled(limit.What, read.Value);
            weights += weight;
            mean += weight * scaled * dried;
            variance += Math.Pow(weight * slope * dried * read.OwnUncertainty, 2);
            shared[read.Instrument] = shared.GetValueOrDefault(read.Instrument) + (weight * slope * dried * read.InstrumentUncertainty);
        }

        (mean, variance) = (mean / weights, (variance + shared.Values.Sum(s => s * s)) / (weights * weights));
        var (bound, up, residual) = (value, least, 0.0);
        var boundDried = limit.Basis.IsStated ? 100.0 / (100.0 - (double)limit.Basis.MoisturePercent) : 1;
        if (relation is not null)
        {
            // flour = a + b·wheat, so the wheat's bound is (flour − a)/b, and the least of a flour is the most of a wheat where b is below zero.
            bound = ((value * boundDried / (relation.FlourBasis.IsStated ? 100.0 / (100.0 - (double)relation.FlourBasis.MoisturePercent) : 1)) - relation.Intercept) / relation.Slope;
            boundDried = relation.WheatBasis.IsStated ? 100.0 / (100.0 - (double)relation.WheatBasis.MoisturePercent) : 1;
            up = least == relation.Slope > 0;
            residual = relation.Uncertainty / relation.Slope;
        }

        var (at, tilt) = Scaled(limit.What, bound);
        var spread = Math.Sqrt(variance + Math.Pow(tilt * residual * boundDried, 2));
        var room = (mean - (at * boundDried)) * (up == tilt > 0 ? 1 : -1) - (z * spread);
        return room >= -Tolerance * Math.Max(Math.Abs(tilt), Math.Abs(at));
    }

    // The scale on which it averages, and the slope of that scale.
    private static (double Scaled, double Slope) Scaled(Property what, double value) => what switch
    {
        Property.FallingNumber => (6000 / (value - 50), -6000 / Math.Pow(value - 50, 2)),
        Property.ThousandKernelWeight or Property.TestWeight => (1 / value, -1 / (value * value)),
        _ => (value, 1),
    };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
