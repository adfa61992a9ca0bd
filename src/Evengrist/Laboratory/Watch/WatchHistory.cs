namespace Evengrist.Laboratory.Watch;

/// <summary>What was said after one pair more.</summary>
/// <param name="Jury">Which judged: by the standard deviations of then.</param>
/// <param name="Sums">What it judged by.</param>
/// <param name="Pairs">How many pairs there were.</param>
/// <param name="Moved">What moved, by them or as it stands from before; otherwise none.</param>
internal sealed record WatchHistory(WatchJury Jury, PairSums Sums, int Pairs, WatchVerdict Moved)
{
    /// <summary>What the pairs so far say by themselves.</summary>
    public WatchFinding Finding => field ??= Jury.Judge(Sums, Pairs);

    /// <summary>Whether nothing moved.</summary>
    public bool IsQuiet => Moved == WatchVerdict.None && Jury.IsQuiet(Finding);

    /// <summary>What was said after every pair, from the second on or the last of the quiet ones, as it would have been said then.</summary>
    /// <param name="spec">Without faults.</param>
    public static IEnumerable<WatchHistory> Of(WatchSpec spec)
    {
        WatchHistory? said = null;
        for (var n = Math.Max(2, spec.Quiet ?? 0); n <= spec.Pairs.Count; n++)
        {
            var deviations = WatchDeviations.Of(spec with { Pairs = [.. spec.Pairs.Take(n)] });
            var jury = said?.Jury is { } same && same.Deviations == deviations ? same : new WatchJury(spec, deviations);
            var sums = ReferenceEquals(jury, said?.Jury) ? said.Sums : jury.Sums(jury.Rows);
            var before = said?.Moved ?? WatchVerdict.None;
            said = new(jury, sums, n, before == WatchVerdict.None && !jury.MayHaveMoved(sums, n) ? before : jury.Judge(sums, n).After(before));
            yield return said;
        }
    }
}
