using MathNet.Numerics.Distributions;

namespace Evengrist.Intake.Sampling;

/// <summary>Edge doubt: the chance that a load is really on the side of an edge that it reads, Φ(|y − edge|/s), and whether another probe would settle it.</summary>
/// <remarks>
/// The error is taken as normal, and nothing else is known of the load than its reading. How many more probes would settle it supposes that their
/// mean stays where the reading is; it may move. Model: docs/model/sampling.md.
/// </remarks>
public static class EdgeModel
{
    /// <summary>More probes than this are not advised: then the reading lies on the edge for every practical purpose.</summary>
    public const int MostMoreProbes = 100;

    /// <summary>The doubt at every edge within reach, nearest first.</summary>
    /// <exception cref="ArgumentException">The spec cannot be.</exception>
    public static IReadOnlyList<EdgeDoubt> Doubts(EdgeSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(spec));
        }

        return [.. spec.Edges.Where(e => Math.Abs(spec.Read - e.At) <= spec.Within * spec.StandardDeviation)
            .OrderBy(e => Math.Abs(spec.Read - e.At)).ThenBy(e => e.At).ThenBy(e => e.Name, StringComparer.Ordinal).Select(e => Doubt(spec, e))];
    }

    private static EdgeDoubt Doubt(EdgeSpec spec, Edge edge)
    {
        var above = Normal.CDF(0, 1, (spec.Read - edge.At) / spec.StandardDeviation);
        var reads = spec.Read >= edge.At;
        var settled = (reads ? above : 1 - above) >= spec.SureFrom;
        return new EdgeDoubt(edge, above, reads, settled, settled ? 0 : More(spec, Math.Abs(spec.Read - edge.At)));
    }

    // The standard deviation must fall to distance/z: what the probes give falls with their number, the rest stays.
    private static int? More(EdgeSpec spec, double distance)
    {
        var z = Normal.InvCDF(0, 1, spec.SureFrom);
        var wanted = distance / z * (distance / z);
        var fromProbes = spec.FromProbes is { } part ? part * part : spec.StandardDeviation * spec.StandardDeviation;
        var room = wanted - (spec.StandardDeviation * spec.StandardDeviation - fromProbes);
        if (room <= 0)
        {
            return null;
        }

        // Known probes: s_b² = part²·n, shared by n + more. Else the sample counts as one and each further one as another.
        var now = spec.FromProbes is null ? 1 : spec.Probes;
        var more = Math.Ceiling(fromProbes * now / room - 1e-9) - now;
        return more > MostMoreProbes ? null : (int)Math.Max(1, more);
    }
}
