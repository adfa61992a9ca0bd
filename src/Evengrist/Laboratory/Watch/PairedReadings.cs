using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Watch;

/// <summary>Readings of one property on one place by a reference method and by an instrument, laid beside each other.</summary>
/// <param name="On">The place.</param>
/// <param name="What">The property.</param>
/// <param name="Reference">The reference method.</param>
/// <param name="Instrument">The instrument that is watched.</param>
/// <param name="Pairs">Each reading with the one nearest to it in time; none is used twice; in the order of time.</param>
public sealed record PairedReadings(PlaceId On, Property What, ReadingSource Reference, ReadingSource Instrument, IReadOnlyList<(Reading Reference, Reading Instrument)> Pairs)
{
    /// <summary>Fewest pairs that are worth showing.</summary>
    public const int Fewest = 2;

    /// <summary>Everything that can be watched: every two sources on different instruments that read the same property of the same place within the span, in one unit on one basis. The reference is the one stated as surer; of two that state the same, or nothing, neither can stand for the other's truth.</summary>
    /// <param name="readings">Readings of one place.</param>
    /// <param name="span">How far apart in time two readings of the same flour may be.</param>
    public static IEnumerable<PairedReadings> Among(IReadOnlyList<Reading> readings, Duration span)
    {
        ArgumentNullException.ThrowIfNull(readings);
        foreach (var property in readings.GroupBy(r => (r.On, r.What)))
        {
            var sources = property.GroupBy(ReadingSource.Of).Select(s => (Source: s.Key, Readings: s.OrderBy(r => r.At).ToArray(), Deviation: Typical(s) ?? double.PositiveInfinity))
                .Where(s => s.Readings.Length >= Fewest).OrderBy(s => s.Deviation).ThenBy(s => s.Source.Words, StringComparer.Ordinal).ToArray();
            foreach (var (i, reference) in sources.Index())
            {
                foreach (var other in sources.Skip(i + 1).Where(o => o.Source.Instrument != reference.Source.Instrument && o.Source.Unit == reference.Source.Unit && o.Source.Basis == reference.Source.Basis && o.Deviation > reference.Deviation))
                {
                    if (Beside(reference.Readings, other.Readings, span) is { Count: >= Fewest } pairs)
                    {
                        yield return new(property.Key.On, property.Key.What, reference.Source, other.Source, pairs);
                    }
                }
            }
        }
    }

    /// <summary>The standard deviation stated with the reference's readings, the middle one; null where none is stated.</summary>
    public double? ReferenceDeviation => Typical(Pairs.Select(p => p.Reference));

    /// <summary>A pair's standard deviation as stated: the instrument's own where it is larger than the reference's, which it then has within it; else of both together; null where one is not stated.</summary>
    public double? PairDeviation => (ReferenceDeviation, Typical(Pairs.Select(p => p.Instrument))) is ({ } reference, { } instrument) ? instrument > reference ? instrument : Math.Sqrt((reference * reference) + (instrument * instrument)) : null;

    /// <summary>As pairs of numbers.</summary>
    public IEnumerable<WatchdogPair> Numbers => Pairs.Select(p => new WatchdogPair((double)p.Reference.Value, (double)p.Instrument.Value));

    private static double? Typical(IEnumerable<Reading> readings)
    {
        double[] stated = [.. readings.Select(r => r.StandardUncertainty).OfType<decimal>().Select(u => (double)u).Order()];
        return stated.Length > 0 ? stated[stated.Length / 2] : null;
    }

    private static List<(Reading, Reading)> Beside(Reading[] references, Reading[] others, Duration span)
    {
        var (pairs, next) = (new List<(Reading, Reading)>(), 0);
        foreach (var reference in references)
        {
            while (next < others.Length && others[next].At < reference.At - span)
            {
                next++;
            }

            if (next >= others.Length || others[next].At > reference.At + span)
            {
                continue;
            }

            while (next + 1 < others.Length && Apart(others[next + 1], reference) < Apart(others[next], reference))
            {
                next++;
            }

            pairs.Add((reference, others[next++]));
        }

        return pairs;
    }

    private static Duration Apart(Reading a, Reading b) => a.At > b.At ? a.At - b.At : b.At - a.At;
}
