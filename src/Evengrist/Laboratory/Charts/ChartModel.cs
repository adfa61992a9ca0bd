using MathNet.Numerics.Statistics;

namespace Evengrist.Laboratory.Charts;

/// <summary>Charts values: limits from the first of them, and every signal in all of them. Model: docs/model/control-charts.md.</summary>
public static class ChartModel
{
    private const int FewForLimits = 20;

    /// <summary>Charts.</summary>
    /// <param name="spec">Without faults.</param>
    /// <returns>The chart; null where the period's values do not differ at all, so that no limits can be.</returns>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static ChartOutcome? Of(ChartSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var period = spec.Period ?? spec.Groups.Count;
        var first = spec.Groups.Take(period).ToArray();
        double[] means = [.. spec.Groups.Select(g => g.Average())];
        var (limits, spreads, sigma, from) = spec.Frozen is { } frozen ? (IndividualsChart.Around(frozen.Centre, frozen.Sigma), IndividualsChart.RangesOf(frozen.Sigma), frozen.Sigma, SigmaEstimate.MovingRange) : spec.Size == 1 ? Singles(means[..period]) : Grouped(first, spec.From);
        if (!(sigma > 0))
        {
            return null;
        }

        var charted = sigma / Math.Sqrt(spec.Size);
        var target = spec.Target ?? limits.Centre;
        double[] z = [.. means.Select(m => (m - limits.Centre) / charted)];
        var fired = spec.Rules.Distinct().SelectMany(r => RunRules.Fires(z, r).Select(i => (At: i, Rule: r))).ToLookup(f => f.At, f => f.Rule);
        var moving = spec.MovingMean is { } mean ? new EwmaChart(target, charted, mean.Weight, mean.Width) : null;
        var sums = spec.Sums is { } s ? new CusumChart(0, s.Allowance, s.Limit) : null;
        var (movingMeans, sumValues) = (moving?.Of(means), sums?.Of([.. means.Select(m => (m - target) / charted)]));
        var spread = SpreadsOf(spec, means);
        ChartPoint[] points = [.. means.Select((m, i) => new ChartPoint(
            i + 1, m, spread[i], spread[i] is { } own && spreads.IsBeyond(own), [.. fired[i]],
            moving is null ? null : (movingMeans![i], moving.At(i + 1).IsBeyond(movingMeans[i])),
            sums is null ? null : (sumValues![i].Above, sumValues[i].Below, sumValues[i].Above > sums.Limit || sumValues[i].Below > sums.Limit)))];
        double[] single = [.. first.SelectMany(g => g)];
        return new ChartOutcome(limits, spreads, sigma, from, period, points, Room(spec, single, sigma), Room(spec, single, single.StandardDeviation()), Remarks(spec, period, single.Length));
    }

    private static (ControlLimits, ControlLimits, double, SigmaEstimate) Singles(double[] period)
    {
        var chart = IndividualsChart.Of(period);
        return (chart.Values, chart.Ranges, chart.Sigma, SigmaEstimate.MovingRange);
    }

    private static (ControlLimits, ControlLimits, double, SigmaEstimate) Grouped(IReadOnlyList<double>[] period, SigmaEstimate from)
    {
        var chart = SubgroupChart.Of(period, from);
        return (chart.Means, chart.Spreads, chart.Sigma, from);
    }

    private static double?[] SpreadsOf(ChartSpec spec, double[] means) => spec.Size == 1 ? [null, .. IndividualsChart.MovingRanges(means).Select(r => (double?)r)] : [.. spec.Groups.Select(g => (double?)SubgroupChart.Spread(g, spec.From))];

    private static Capability? Room(ChartSpec spec, double[] single, double sigma) => spec.Lower is null && spec.Upper is null ? null : Capability.Of(single.Average(), sigma, single.Length, spec.Lower, spec.Upper, spec.Target);

    private static string[] Remarks(ChartSpec spec, int period, int values) =>
    [
        .. period < FewForLimits ? [$"Limits from {period} {(spec.Size == 1 ? "values" : "groups")} are wide of the mark by chance: {FewForLimits} or more are usual."] : Array.Empty<string>(),
        .. (spec.Lower ?? spec.Upper) is not null && values < Capability.UsualCount ? [$"Capability rests on {values} values; about {Capability.UsualCount} independent ones are asked for. Its confidence limits say how little is known."] : Array.Empty<string>(),
        .. spec.Rules.Count > 1 ? ["Each rule adds false alarms: the four together give about one in 90 values where nothing has moved (from memory)."] : Array.Empty<string>(),
    ];
}
