using System.Globalization;

namespace Evengrist.Laboratory.Watch;

/// <summary>What a watch says, in words.</summary>
public static class WatchWords
{
    /// <summary>The verdict.</summary>
    /// <param name="verdict">What the pairs say.</param>
    /// <param name="hasWheat">Whether the wheat was read with every pair.</param>
    public static string Words(this WatchVerdict verdict, bool hasWheat = false) => verdict switch
    {
        WatchVerdict.NothingMoved => "nothing moved",
        WatchVerdict.Instrument => "the instrument",
        WatchVerdict.Flour => hasWheat ? "wheat or mix" : "wheat, mix or mill",
        WatchVerdict.Mill => "the mill",
        WatchVerdict.Both => "flour and instrument both",
        _ => "not sure yet",
    };

    /// <summary>A rival.</summary>
    /// <param name="cause">What may have moved.</param>
    /// <param name="hasWheat">Whether the wheat was read with every pair.</param>
    public static string Words(this WatchCause cause, bool hasWheat = false) => cause switch
    {
        WatchCause.Instrument => "instrument, at once",
        WatchCause.InstrumentDrift => "instrument, drifting",
        WatchCause.Flour => hasWheat ? "wheat or mix" : "wheat, mix or mill",
        WatchCause.Mill => "mill",
        WatchCause.Both => "flour and instrument both",
        _ => "nothing moved",
    };

    /// <summary>What the verdict rests on and what to do next, a sentence each.</summary>
    /// <param name="outcome">The outcome.</param>
    /// <param name="spec">What was judged.</param>
    public static IReadOnlyList<string> Evidence(WatchOutcome outcome, WatchSpec spec)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(spec);
        return [.. Means(outcome, spec), .. Next(outcome)];
    }

    private static IEnumerable<string> Means(WatchOutcome outcome, WatchSpec spec)
    {
        if (outcome.Change is { After: > 0 and var k } change && (outcome.Verdict is not (WatchVerdict.None or WatchVerdict.NothingMoved) || change.Probability >= WatchJury.WorthAThought))
        {
            var (before, after) = (spec.Pairs.Take(k).ToArray(), spec.Pairs.Skip(k).ToArray());
            yield return FormattableString.Invariant($"Between pairs {k} and {k + 1} the mean difference goes from {before.Average(p => p.Difference):+0.000;−0.000;0.000} to {after.Average(p => p.Difference):+0.000;−0.000;0.000}, the mean reference from {before.Average(p => p.Reference):0.000} to {after.Average(p => p.Reference):0.000}.");
        }

        yield return FormattableString.Invariant($"One standard deviation of a pair is {outcome.Deviations.Pair:0.###}, of the references from pair to pair {outcome.Deviations.Level:0.###}: {outcome.Deviations.From}.");
        yield return Asked(outcome, spec);
        yield return outcome.SumAlarm is { } at
            ? FormattableString.Invariant($"The plain cumulative sum (k {outcome.Allowance:0.###}, h {outcome.Limit:0.###}) rings at pair {at}, with {Math.Max(outcome.Sums[at - 1].Above, outcome.Sums[at - 1].Below):0.00}.")
            : FormattableString.Invariant($"The plain cumulative sum (k {outcome.Allowance:0.###}, h {outcome.Limit:0.###}) does not ring.");
    }

    // A move very young has to show much, one that has held eight pairs less.
    private static string Asked(WatchOutcome outcome, WatchSpec spec)
    {
        string Times(double asked) => (spec.Asked * asked).ToString("#,0.##", CultureInfo.InvariantCulture).Replace(',', ' ');
        var found = outcome.Fit switch
        {
            < 0.01 => "less than a hundredth of that",
            < 1 => FormattableString.Invariant($"{outcome.Fit:0.##} of that"),
            _ when outcome.Verdict == WatchVerdict.None => "enough for a move, not to name what moved",
            >= 1000 => "more than a thousand times that",
            _ => FormattableString.Invariant($"{outcome.Fit:0.#} times that"),
        };
        return $"A verdict asks that the pairs fit a move better than none: {Times(AskedFit.WhenDue)} times where it has held {AskedFit.Due} pairs, {Times(AskedFit.Else)} times where fewer or more, {Times(AskedFit.AtFirst)} where it began among the first {AskedFit.FirstPairs} pairs. Found: {found}.";
    }

    private static IEnumerable<string> Next(WatchOutcome outcome)
    {
        if (outcome.Verdict == WatchVerdict.None)
        {
            yield return outcome.More is { } more ? $"Take {more} more {(more == 1 ? "pair" : "pairs")}: about so many are needed until a verdict if they go on like this." : $"More than {WatchOutcome.MostMore} further pairs would be needed at this rate: pairs that agree better, or a longer quiet period before, help more.";
        }

        if (outcome.Verdict is WatchVerdict.Instrument or WatchVerdict.Both)
        {
            yield return "Before a bias is set: read the check sample, look at lamp, cell and calibration, and let a named person decide. Lots released since the start are to be judged again.";
        }
    }
}
