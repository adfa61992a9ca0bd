using Evengrist.Laboratory.Charts;

namespace Evengrist.Laboratory.Watch;

/// <summary>Meter or wheat: whether the instrument moved, the flour, both, or nothing. Model: docs/model/meter-or-wheat.md.</summary>
public static class WatchModel
{
    /// <summary>Judges pairs, one after the other.</summary>
    /// <param name="spec">Without faults.</param>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static WatchOutcome Of(WatchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        WatchHistory[] said = [.. WatchHistory.Of(spec)];
        var (jury, finding) = (said[^1].Jury, said[^1].Finding);
        var verdict = said[^1].IsQuiet ? WatchVerdict.NothingMoved : said[^1].Moved;
        var cusum = new CusumChart(spec.KnownBias, spec.Allowance ?? 0.4 * jury.Deviations.Pair, spec.Limit ?? 3 * jury.Deviations.Pair);
        double[] differences = [.. spec.Pairs.Select(p => p.Difference)];
        var alarms = cusum.Signals(differences);
        return new WatchOutcome(
            verdict, finding.Rivals, finding.Fit, verdict == WatchVerdict.None ? jury.More(finding.Rivals) : null, jury.Deviations, cusum.Of(differences), cusum.Allowance, cusum.Limit, alarms.Count > 0 ? alarms[0] + 1 : null,
            verdict == WatchVerdict.None ? null : Since(said, verdict));
    }

    private static int Since(WatchHistory[] said, WatchVerdict verdict) =>
        said.Reverse().TakeWhile(s => verdict == WatchVerdict.NothingMoved ? s.IsQuiet : s.Moved == verdict).Last().Pairs;
}
