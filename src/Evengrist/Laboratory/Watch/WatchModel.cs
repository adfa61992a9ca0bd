using Evengrist.Laboratory.Charts;

namespace Evengrist.Laboratory.Watch;

/// <summary>Meter or wheat: whether the instrument moved, the flour, both, or nothing. Model: docs/model/meter-or-wheat.md.</summary>
public static class WatchModel
{
    /// <summary>Judges pairs.</summary>
    /// <param name="spec">Without faults.</param>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static WatchOutcome Of(WatchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var deviations = WatchDeviations.Of(spec);
        var jury = new WatchJury(spec, deviations);
        var rows = jury.Rows(spec.Pairs);
        var rivals = jury.Rivals(rows);
        var verdict = jury.Verdict(rivals, rows.Count);
        var cusum = new CusumChart(spec.KnownBias, spec.Allowance ?? 0.4 * deviations.Pair, spec.Limit ?? 3 * deviations.Pair);
        double[] differences = [.. spec.Pairs.Select(p => p.Difference)];
        var alarms = cusum.Signals(differences);
        return new WatchOutcome(
            verdict, rivals, verdict == WatchVerdict.None ? jury.More(rows, rivals) : null, deviations, cusum.Of(differences), cusum.Allowance, cusum.Limit, alarms.Count > 0 ? alarms[0] + 1 : null, Since(jury, rows, verdict));
    }

    private static int? Since(WatchJury jury, IReadOnlyList<double[]> rows, WatchVerdict verdict)
    {
        if (verdict == WatchVerdict.None)
        {
            return null;
        }

        var since = rows.Count;
        while (since > 2 && jury.Verdict(jury.Rivals([.. rows.Take(since - 1)]), since - 1) == verdict)
        {
            since--;
        }

        return since;
    }
}
