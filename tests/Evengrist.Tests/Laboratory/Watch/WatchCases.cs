using Evengrist.Laboratory.Watch;
using Evengrist.Numerics;

namespace Evengrist.Tests.Laboratory.Watch;

/// <summary>The twelve pairs of the fictional mill, and simulated ones.</summary>
internal static class WatchCases
{
    private const double ReferenceDeviation = 0.05, PairDeviation = 0.12, Swing = 0.1;

    public static readonly double[] Reference = [11.86, 11.91, 11.78, 11.95, 11.88, 11.83, 11.90, 11.97, 11.81, 11.85, 11.92, 11.89];
    public static readonly double[] Read = [11.90, 11.84, 11.86, 11.93, 12.12, 12.15, 12.14, 12.27, 12.09, 12.10, 12.25, 12.16];

    public static WatchSpec Spec(IEnumerable<WatchdogPair> pairs) => new([.. pairs]) { ReferenceDeviation = ReferenceDeviation, PairDeviation = PairDeviation };

    public static WatchSpec OfTheMill(int pairs) => Spec(Reference.Zip(Read, (r, i) => new WatchdogPair(r, i)).Take(pairs)) with { Allowance = 0.05, Limit = 0.4 };

    /// <summary>Judges pair after pair until the first verdict that something moved. Right: it names what moved, after the move and no later than the last pair. Wrong: it names anything else, or comes before the move. Not sure: none to the last pair.</summary>
    public static (int Right, int Wrong, int NotSure) Play(WatchVerdict moved, int sequences, int before, int after, double size, double askTimes, bool isKnown, bool hasWheat = false)
    {
        var (right, wrong) = (0, 0);
        Parallel.For(0, sequences, s =>
        {
            var spec = Spec(Draw(new SeededDraws(20 + (int)moved, s), moved, before, after, size * PairDeviation, hasWheat)) with { AskTimes = askTimes };
            // Known: as after very many pairs, the deviations, and the bias to a twentieth of a pair's.
            var first = WatchHistory.Of(isKnown ? spec with { StatedCounts = null, Swing = Swing, BiasShare = 0.05 } : spec).FirstOrDefault(h => h.Moved != WatchVerdict.None);
            if (first is not null && first.Moved == moved && first.Pairs > before)
            {
                Interlocked.Increment(ref right);
            }
            else if (first is not null)
            {
                Interlocked.Increment(ref wrong);
            }
        });
        return (right, wrong, sequences - right - wrong);
    }

    private static IEnumerable<WatchdogPair> Draw(SeededDraws draws, WatchVerdict moved, int before, int after, double shift, bool hasWheat)
    {
        var own = Math.Sqrt((PairDeviation * PairDeviation) - (ReferenceDeviation * ReferenceDeviation));
        for (var i = 0; i < before + after; i++)
        {
            var by = i < before ? 0 : shift;
            var wheat = 11.9 + (Swing * draws.Normal()) + (moved is WatchVerdict.Flour or WatchVerdict.Both ? by : 0);
            var flour = wheat + (moved is WatchVerdict.Mill ? by : 0);
            yield return new WatchdogPair(
                flour + (ReferenceDeviation * draws.Normal()), flour + (own * draws.Normal()) + (moved is WatchVerdict.Instrument or WatchVerdict.Both ? by : 0), hasWheat ? wheat + 1.2 + (ReferenceDeviation * draws.Normal()) : null);
        }
    }
}
