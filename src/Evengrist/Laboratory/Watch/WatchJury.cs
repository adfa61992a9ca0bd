namespace Evengrist.Laboratory.Watch;

/// <summary>Judges any number of pairs by one set of standard deviations, and reckons on.</summary>
internal sealed class WatchJury(WatchSpec spec, WatchDeviations deviations)
{
    /// <summary>A change less likely than this is not reckoned on or spoken of [ours].</summary>
    public const double WorthAThought = 0.05;

    // [ours] "Nothing moved" is said from this probability on; a fit beyond e to this is not told apart.
    private const double QuietEnough = 0.8, MostLog = 600;

    private readonly ChangeSearch search = new(spec, deviations);

    /// <summary>The standard deviations gone by.</summary>
    public WatchDeviations Deviations => deviations;

    /// <summary>Reference, difference less the known bias, wheat.</summary>
    public IReadOnlyList<double[]> Rows { get; } = [.. spec.Pairs.Select(p => spec.HasWheat ? [p.Reference, p.Difference - spec.KnownBias, p.Wheat!.Value] : new[] { p.Reference, p.Difference - spec.KnownBias })];

    /// <summary>The sums of rows, to judge as many of them as one likes.</summary>
    public PairSums Sums(IReadOnlyList<double[]> rows) => search.Sums(rows);

    /// <summary>Whether something may have moved at all, cheaply: where not, there is no verdict of a move.</summary>
    public bool MayHaveMoved(PairSums sums, int pairs) => search.MayHaveMoved(sums, pairs);

    /// <summary>What so many pairs say by themselves.</summary>
    public WatchFinding Judge(PairSums sums, int pairs)
    {
        var found = search.Of(sums, pairs);
        var largest = Math.Max(0, found.Max(f => f.Starts.Max(s => s.LogFit)));
        var odds = spec.ChangePerPair / (1 - (spec.ChangePerPair * found.Sum(f => f.Rival.Share)));
        var weights = found.Select(f => odds * f.Rival.Share * f.Starts.Sum(s => Math.Exp(s.LogFit - largest))).ToArray();
        var nothing = Math.Exp(-largest);
        var all = nothing + weights.Sum();
        var fit = found.Sum(f => f.Rival.Share * f.Starts.Sum(s => Math.Exp(Math.Min(s.LogFit, MostLog)) / AskedFit.Of(s.After, pairs - s.After))) / spec.Asked;
        return new(pairs, [.. found.Select((f, i) => Summed(f.Rival.Cause, f.Starts, weights[i] / all, largest)).Append(new WatchRival(WatchCause.None, nothing / all)).OrderByDescending(r => r.Probability)], fit);
    }

    /// <summary>Whether nothing moved: likely enough, and a shift worth finding would have been seen.</summary>
    public bool IsQuiet(WatchFinding finding) => finding.Of(WatchVerdict.NothingMoved) >= QuietEnough && search.Sought(finding.Pairs).All(rows => Judge(Sums(rows), finding.Pairs).Moved != WatchVerdict.None);

    /// <summary>Pairs to take until there is a verdict, if they come as the likeliest change has them; where no change is worth a thought, until a shift worth finding would be seen.</summary>
    public int? More(IReadOnlyList<WatchRival> rivals)
    {
        var change = rivals.FirstOrDefault(r => r.Cause != WatchCause.None && r.Probability >= WorthAThought);
        var next = change is null ? Mean(Rows) : Next(Rows, change);
        List<double[]> further = [.. Rows];
        while (further.Count < Math.Min(Rows.Count + WatchOutcome.MostMore, WatchSpec.Most))
        {
            further.Add([.. next]);
            next[1] += change?.Cause == WatchCause.InstrumentDrift ? change.Size!.Value : 0;
        }

        var sums = Sums(further);
        return Enumerable.Range(1, further.Count - Rows.Count).Select(more => (int?)more).FirstOrDefault(more => Judge(sums, Rows.Count + more!.Value) is var then && (then.Moved != WatchVerdict.None || IsQuiet(then)));
    }

    private static WatchRival Summed(WatchCause cause, IReadOnlyList<ChangeStart> starts, double probability, double largest)
    {
        var best = starts.MaxBy(s => s.LogFit);
        var weight = starts.Sum(s => Math.Exp(s.LogFit - largest));
        if (!(weight > 0))
        {
            return new(cause, 0, best.After, 1, best.Size, best.SizeDeviation);
        }

        var (mean, square) = (0.0, 0.0);
        foreach (var start in starts)
        {
            var share = Math.Exp(start.LogFit - largest) / weight;
            mean += share * start.Size;
            square += share * ((start.Size * start.Size) + (start.SizeDeviation * start.SizeDeviation));
        }

        return new(cause, probability, best.After, Math.Exp(best.LogFit - largest) / weight, mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
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
