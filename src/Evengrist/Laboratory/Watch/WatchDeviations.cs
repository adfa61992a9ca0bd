using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Evengrist.Laboratory.Watch;

/// <summary>The standard deviations a watch goes by, and where they are from.</summary>
/// <param name="Reference">Of a reference result.</param>
/// <param name="Instrument">Of an instrument's result beside it, so that both together make a pair's.</param>
/// <param name="Swing">Of the flour itself from pair to pair.</param>
/// <param name="Wheat">Of a reading of the wheat.</param>
/// <param name="From">Where a pair's is from, in words.</param>
public sealed record WatchDeviations(double Reference, double Instrument, double Swing, double Wheat, string From)
{
    private const double CautiousShare = 0.2;

    /// <summary>Of instrument less reference.</summary>
    public double Pair => Root(Square(Reference) + Square(Instrument));

    /// <summary>Of the references from pair to pair.</summary>
    public double Level => Root(Square(Reference) + Square(Swing));

    /// <summary>What is stated counts as so many pairs and the steps between the pairs' own differences are laid beside it; from a quiet period, the upper end of what it leaves open (one time in five it is larger). The swing from the references' steps.</summary>
    public static WatchDeviations Of(WatchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var (reference, instrument, from) = spec.Quiet is { } quiet ? FromQuiet(spec, quiet) : AsStated(spec);
        var pair = Root(Square(reference) + Square(instrument));
        var level = spec.Swing is null ? Laid(Square(reference) + Square(pair), spec.StatedCounts ?? WatchSpec.UsualCounts, [.. spec.Pairs.Select(p => p.Reference)]) : 0;
        return new WatchDeviations(reference, instrument, spec.Swing ?? Root(Math.Max(0, level - Square(reference))), spec.WheatDeviation ?? reference, from);
    }

    private static (double Reference, double Instrument, string From) AsStated(WatchSpec spec)
    {
        var (reference, pair) = (spec.ReferenceDeviation!.Value, spec.PairDeviation!.Value);
        if (spec.StatedCounts is { } counts)
        {
            var stretch = Root(Laid(Square(pair), counts, [.. spec.Pairs.Select(p => p.Difference)])) / pair;
            var from = FormattableString.Invariant($"a pair's as stated ({pair:0.####}), counted as {counts:0} pairs, with the steps between these {spec.Pairs.Count} pairs laid beside it");
            return (reference * stretch, Root(Square(pair) - Square(reference)) * stretch, from);
        }

        return (reference, Root(Square(pair) - Square(reference)), FormattableString.Invariant($"a pair's as stated ({pair:0.####}), taken as known"));
    }

    private static (double Reference, double Instrument, string From) FromQuiet(WatchSpec spec, int quiet)
    {
        var found = spec.Pairs.Take(quiet).Select(p => p.Difference).StandardDeviation();
        var pair = Math.Max(found * Root((quiet - 1) / ChiSquared.InvCDF(quiet - 1, CautiousShare)), 1e-6);
        var reference = Math.Min(spec.ReferenceDeviation ?? pair / Math.Sqrt(2), 0.99 * pair);
        return (reference, Root(Square(pair) - Square(reference)), FormattableString.Invariant($"a pair's from the first {quiet} pairs ({found:0.####}), taken as {pair:0.####} since so few leave it open"));
    }

    // Half the mean square of steps is the variance of values about a level that stays; one jump adds little to it.
    private static double Laid(double stated, double counts, double[] values)
    {
        var steps = values.Zip(values.Skip(1), (a, b) => Square(b - a) / 2).Sum();
        return ((counts * stated) + steps) / (counts + values.Length - 1);
    }

    private static double Square(double x) => x * x;

    private static double Root(double x) => Math.Sqrt(x);
}
