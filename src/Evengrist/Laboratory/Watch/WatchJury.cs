namespace Evengrist.Laboratory.Watch;

/// <summary>Judges any number of pairs by one set of standard deviations, and reckons on.</summary>
internal sealed class WatchJury(WatchSpec spec, WatchDeviations deviations)
{
    /// <summary>A change less likely than this is not reckoned on or spoken of [ours].</summary>
    public const double WorthAThought = 0.05;

    private readonly ChangeSearch search = new(spec, deviations);
    private readonly Dictionary<int, bool> seen = [];

    /// <summary>Reference, difference less the known bias, wheat.</summary>
    public IReadOnlyList<double[]> Rows(IEnumerable<WatchdogPair> pairs) => [.. pairs.Select(p => spec.HasWheat ? [p.Reference, p.Difference - spec.KnownBias, p.Wheat!.Value] : new[] { p.Reference, p.Difference - spec.KnownBias })];

    /// <summary>Every answer by its probability, the likeliest first.</summary>
    public IReadOnlyList<WatchRival> Rivals(IReadOnlyList<double[]> rows)
    {
        var found = search.Of(rows).ToArray();
        var largest = Math.Max(0, found.Max(f => f.Starts.Max(s => s.LogOdds)));
        var weights = found.Select(f => f.Starts.Sum(s => Math.Exp(s.LogOdds - largest))).ToArray();
        var nothing = Math.Exp(-largest);
        var all = nothing + weights.Sum();
        return [.. found.Select((f, i) => Summed(f.Rival.Cause, f.Starts, weights[i], weights[i] / all, largest)).Append(new WatchRival(WatchCause.None, nothing / all)).OrderByDescending(r => r.Probability)];
    }

    /// <summary>The answer that is likely enough; "nothing moved" only where a shift worth finding would have been seen.</summary>
    public WatchVerdict Verdict(IReadOnlyList<WatchRival> rivals, int pairs)
    {
        var sure = Enum.GetValues<WatchVerdict>().Where(v => v != WatchVerdict.None).FirstOrDefault(v => rivals.Where(r => AnswerOf(r.Cause) == v).Sum(r => r.Probability) >= spec.Threshold);
        return sure == WatchVerdict.NothingMoved && !WouldBeSeen(pairs) ? WatchVerdict.None : sure;
    }

    /// <summary>Pairs to take until there is a verdict, if they come as the likeliest change has them; where no change is worth a thought, until a shift worth finding would be seen.</summary>
    public int? More(IReadOnlyList<double[]> rows, IReadOnlyList<WatchRival> rivals)
    {
        var change = rivals.FirstOrDefault(r => r.Cause != WatchCause.None && r.Probability >= WorthAThought);
        var next = change is null ? Mean(rows) : Next(rows, change);
        List<double[]> further = [.. rows];
        for (var more = 1; more <= WatchOutcome.MostMore && further.Count < WatchSpec.Most; more++)
        {
            further.Add([.. next]);
            if (change?.Cause == WatchCause.InstrumentDrift)
            {
                next[1] += change.Size!.Value;
            }

            if (Verdict(Rivals(further), further.Count) != WatchVerdict.None)
            {
                return more;
            }
        }

        return null;
    }

    private static WatchVerdict AnswerOf(WatchCause cause) => cause switch
    {
        WatchCause.Instrument or WatchCause.InstrumentDrift => WatchVerdict.Instrument,
        WatchCause.Flour => WatchVerdict.Flour,
        WatchCause.Mill => WatchVerdict.Mill,
        WatchCause.Both => WatchVerdict.Both,
        _ => WatchVerdict.NothingMoved,
    };

    private static WatchRival Summed(WatchCause cause, IReadOnlyList<ChangeStart> starts, double weight, double probability, double largest)
    {
        var best = starts.MaxBy(s => s.LogOdds);
        if (!(weight > 0))
        {
            return new(cause, 0, best.After, 1, best.Size, best.SizeDeviation);
        }

        var (mean, square) = (0.0, 0.0);
        foreach (var start in starts)
        {
            var share = Math.Exp(start.LogOdds - largest) / weight;
            mean += share * start.Size;
            square += share * ((start.Size * start.Size) + (start.SizeDeviation * start.SizeDeviation));
        }

        return new(cause, probability, best.After, Math.Exp(best.LogOdds - largest) / weight, mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }

    // Had the instrument moved half-way through so many pairs, by the size worth finding and without chance, would the verdict say so?
    private bool WouldBeSeen(int pairs)
    {
        if (!seen.TryGetValue(pairs, out var answer))
        {
            double[][] rows = [.. Enumerable.Range(0, pairs).Select(i => new[] { 0, i < pairs / 2 ? 0 : ChangeRival.Sought * deviations.Pair, 0 }[..(spec.HasWheat ? 3 : 2)])];
            seen[pairs] = answer = Rivals(rows).Where(r => AnswerOf(r.Cause) == WatchVerdict.Instrument).Sum(r => r.Probability) >= spec.Threshold;
        }

        return answer;
    }

    private static double[] Mean(IReadOnlyList<double[]> rows) => [.. rows[0].Select((_, c) => rows.Average(r => r[c]))];

    // After a change the readings go on at the mean of those after it; a drift goes on from the last by its step.
    private static double[] Next(IReadOnlyList<double[]> rows, WatchRival change)
    {
        var after = Mean([.. rows.Skip(change.After!.Value)]);
        if (change.Cause == WatchCause.InstrumentDrift)
        {
            after[1] += change.Size!.Value * (rows.Count - change.After.Value + 1) / 2;
        }

        return after;
    }
}
