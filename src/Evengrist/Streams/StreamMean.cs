namespace Evengrist.Streams;

/// <summary>A property of streams run together. Page: docs/model/streams.md.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">Its mean by yield on the scale that averages, turned back; usual unit, ash and protein on the table's basis.</param>
/// <param name="StandardUncertainty">One standard uncertainty from readings and weighing, in the same unit.</param>
public sealed record StreamMean(StreamProperty What, double Value, double StandardUncertainty)
{
    /// <summary>The mean of streams of which so much goes in; null where one of them was not read for it.</summary>
    /// <exception cref="ArgumentException">Nothing goes in.</exception>
    public static StreamMean? Of(StreamProperty what, IReadOnlyList<(MillStream Stream, double Share)> parts, StreamMethods methods)
    {
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Any(p => p.Share > 0 && what.Read(p.Stream) is null))
        {
            return null;
        }

        var (scaled, uncertainty) = Weighed(parts, methods, s => what.OnScale(what.Read(s)!.Value), s => what.SlopeAt(what.Read(s)!.Value) * what.Uncertainty(what.Read(s)!.Value, methods));
        var value = what.FromScale(scaled);
        return new StreamMean(what, value, uncertainty / what.SlopeAt(value));
    }

    /// <summary>Mean by yield of what each stream has, with the uncertainty that comes of its own and of the weighing: u² = Σ w²u² + Σ (w r (t − T))².</summary>
    internal static (double Mean, double Uncertainty) Weighed(IReadOnlyList<(MillStream Stream, double Share)> parts, StreamMethods methods, Func<MillStream, double> has, Func<MillStream, double> unsure)
    {
        (double Weight, double Has, double Unsure)[] of = [.. parts.Where(p => p.Share > 0).Select(p => (p.Share * p.Stream.Yield, has(p.Stream), unsure(p.Stream)))];
        var all = of.Sum(p => p.Weight);
        if (!(all > 0))
        {
            throw new ArgumentException("Nothing goes in.", nameof(parts));
        }

        var mean = of.Sum(p => p.Weight * p.Has) / all;
        return (mean, Math.Sqrt(of.Sum(p => Math.Pow(p.Weight * p.Unsure, 2) + Math.Pow(p.Weight * methods.YieldShare * (p.Has - mean), 2))) / all);
    }
}
