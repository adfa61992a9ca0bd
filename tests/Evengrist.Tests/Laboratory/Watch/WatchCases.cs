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

    /// <summary>Judges pair after pair until the first verdict that something moved: how many were right, wrong, and not sure to the end.</summary>
    public static (int Right, int Wrong, int NotSure) Play(WatchVerdict moved, int sequences, int before, int after, double size, double chance, bool isKnown)
    {
        var (right, wrong) = (0, 0);
        Parallel.For(0, sequences, s =>
        {
            WatchdogPair[] pairs = [.. Draw(new SeededDraws(20 + (int)moved, s), moved, before, after, size * PairDeviation)];
            var first = First(pairs, chance, isKnown);
            if (first.Verdict == moved && first.At > before)
            {
                Interlocked.Increment(ref right);
            }
            else if (first.Verdict != WatchVerdict.None)
            {
                Interlocked.Increment(ref wrong);
            }
        });
        return (right, wrong, sequences - right - wrong);
    }

    private static (WatchVerdict Verdict, int At) First(WatchdogPair[] pairs, double chance, bool isKnown)
    {
        WatchJury? jury = null;
        for (var n = 3; n <= pairs.Length; n++)
        {
            var spec = Spec(pairs.Take(n)) with { ChangePerPair = chance, StatedCounts = isKnown ? null : WatchSpec.UsualCounts, Swing = isKnown ? Swing : null };
            jury = isKnown && jury is not null ? jury : new WatchJury(spec, WatchDeviations.Of(spec));
            if (jury.Verdict(jury.Rivals(jury.Rows(spec.Pairs)), n) is not (WatchVerdict.None or WatchVerdict.NothingMoved) and var verdict)
            {
                return (verdict, n);
            }
        }

        return (WatchVerdict.None, pairs.Length);
    }

    private static IEnumerable<WatchdogPair> Draw(SeededDraws draws, WatchVerdict moved, int before, int after, double shift)
    {
        var own = Math.Sqrt((PairDeviation * PairDeviation) - (ReferenceDeviation * ReferenceDeviation));
        for (var i = 0; i < before + after; i++)
        {
            var by = i < before ? 0 : shift;
            var flour = 11.9 + (Swing * draws.Normal()) + (moved is WatchVerdict.Flour or WatchVerdict.Both ? by : 0);
            yield return new WatchdogPair(flour + (ReferenceDeviation * draws.Normal()), flour + (own * draws.Normal()) + (moved is WatchVerdict.Instrument or WatchVerdict.Both ? by : 0));
        }
    }
}
