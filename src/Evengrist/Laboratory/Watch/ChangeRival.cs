namespace Evengrist.Laboratory.Watch;

/// <summary>One way in which readings may have moved: along one direction, by a step or a drift; or along two at once.</summary>
/// <param name="Cause">What it is.</param>
/// <param name="Direction">Which direction, by its number.</param>
/// <param name="Second">The second where two moved; null for one.</param>
/// <param name="Share">How likely it is beforehand beside a step of the instrument.</param>
/// <param name="First">Fewest pairs before its start: 0 where the level before is known without pairs.</param>
internal sealed record ChangeRival(WatchCause Cause, int Direction, int? Second, double Share, int First)
{
    // [ours] Drifts and two moves at once are rarer. A flour's move is looked for a little less keenly than an instrument's, so that both are found alike; less still where the wheat beside it shows it the clearer, the mill's least.
    private const double RareShare = 0.1, FlourShare = 0.6, WheatShare = 0.4, MillShare = 0.1;
    private const double Slight = 2, SlightFit = 7.4; // A fit of less than e to the 2 counts as that in the bound: nothing beside what is asked.
    private const int Instrument = 0, Flour = 1, Mill = 2;

    /// <summary>The directions by their numbers.</summary>
    public static ChangeDirection[] Directions(WatchSpec spec, WatchDeviations by) => spec.HasWheat
        ? [new([0, 1, 0], by.Pair), new([1, 0, 1], by.Level), new([1, 0, 0], by.Level)]
        : [new([0, 1], by.Pair), new([1, 0], by.Level)];

    /// <summary>Every rival.</summary>
    public static ChangeRival[] Of(WatchSpec spec) =>
    [
        new(WatchCause.Instrument, Instrument, null, 1, 0),
        new(WatchCause.InstrumentDrift, Instrument, null, RareShare, 1),
        new(WatchCause.Flour, Flour, null, spec.HasWheat ? WheatShare : FlourShare, 1),
        .. spec.HasWheat ? [new ChangeRival(WatchCause.Mill, Mill, null, MillShare, 1)] : Array.Empty<ChangeRival>(),
        new(WatchCause.Both, Instrument, Flour, RareShare, 1),
    ];

    /// <summary>Its starts, the earliest first.</summary>
    /// <param name="sums">Of the pairs.</param>
    /// <param name="pairs">How many pairs are judged, from the first.</param>
    public ChangeStart[] Starts(PairSums sums, int pairs) => [.. Enumerable.Range(First, Math.Max(0, pairs - First)).Select(after => Second is { } second
        ? Two(after, sums.Step(Direction, after, pairs), sums.Step(second, after, pairs), sums.Shared(Direction, second, after, pairs))
        : One(after, Score(sums, after, pairs)))];

    /// <summary>Most of what is asked for that any sizes could reach, every start together: cheaper than the starts.</summary>
    /// <param name="sums">Of the pairs.</param>
    /// <param name="pairs">How many pairs are judged, from the first.</param>
    public double MostFit(PairSums sums, int pairs)
    {
        var most = 0.0;
        for (var after = First; after < pairs; after++)
        {
            var log = Second is { } second ? sums.Step(Direction, after, pairs).MostLogFitWith(sums.Step(second, after, pairs), sums.Shared(Direction, second, after, pairs)) : Score(sums, after, pairs).MostLogFit;
            most += (log < Slight ? SlightFit : Math.Exp(log)) / AskedFit.Of(after, pairs - after);
        }

        return Share * most;
    }

    private MoveScore Score(PairSums sums, int after, int pairs) => Cause == WatchCause.InstrumentDrift ? sums.Drift(Direction, after, pairs) : sums.Step(Direction, after, pairs);

    private ChangeStart One(int after, MoveScore score) =>
        new(after, Cause == WatchCause.InstrumentDrift ? SizePrior.OfDrift(score) : SizePrior.OfStep(score), score.Score / score.Known, 1 / Math.Sqrt(score.Known));

    private static ChangeStart Two(int after, MoveScore one, MoveScore two, double cross)
    {
        var plain = (one.Known * two.Known) - (cross * cross);
        return new(after, SizePrior.OfTwo(one, two, cross), ((one.Score * two.Known) - (two.Score * cross)) / plain, Math.Sqrt(two.Known / plain));
    }
}
