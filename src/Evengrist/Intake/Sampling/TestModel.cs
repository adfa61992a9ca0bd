namespace Evengrist.Intake.Sampling;

/// <summary>What a test of this load is worth now: the expected loss it avoids, less the queue and its own cost.</summary>
/// <remarks>
/// <para>
/// Without a test the load goes where the expected loss is least. With it, one level decides: the level with the least expected loss, sought over all. The
/// value is the difference (the expected value of imperfect information). Integrated numerically over the prior, split at the limit; the same every time.
/// </para>
/// <para>
/// Taken for granted: two bins, a loss that is the same however far beyond the limit the load lies, a normal test error, and that the next load is like
/// the earlier ones. Model: docs/model/test-or-not.md.
/// </para>
/// </remarks>
public static class TestModel
{
    /// <summary>Said wherever an answer is shown.</summary>
    public static IReadOnlyList<string> Assumed { get; } =
    [
        "Two bins, and a load beyond the limit costs the same however far beyond it lies.",
        "The load is like the earlier ones of its district; their test error was taken out of their spread.",
        "The test's error is normal; one level decides, the one with the least expected loss.",
        "A discount counts only where the load is really beyond the limit; a truck that waits costs the same every minute.",
    ];

    /// <summary>Whether to test.</summary>
    /// <exception cref="ArgumentException">The spec cannot be.</exception>
    public static TestOutcome Ask(TestSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is [var fault, ..])
        {
            throw new ArgumentException(fault, nameof(spec));
        }

        var loads = PosedLoads.Of(spec);
        var acceptedBad = spec.WrongBinPerTonne * spec.Tonnes + spec.Claim;
        var divertedGood = spec.DivertedGoodPerTonne * spec.Tonnes;
        var discount = spec.DiscountPerTonne * spec.Tonnes;
        var bad = loads.ChanceBad;
        var (accept, divert) = (bad * acceptedBad, (1 - bad) * divertedGood);
        var untested = Math.Min(accept, divert);
        var (level, tested) = loads.BestLevel(share => share.AcceptedBad * acceptedBad + share.DivertedGood * divertedGood - (bad - share.AcceptedBad) * discount, untested);
        var queue = spec.Minutes * spec.CostPerMinute * spec.TrucksWaiting;
        var each = spec.Minutes * spec.CostPerMinute;
        var turns = each > 0 ? Math.Max(0, (untested - tested - spec.OwnCost) / each) : (double?)null;
        var knowing = Math.Min(-bad * discount, tested);
        return untested - tested > queue + spec.OwnCost
            ? new TestNow(bad, accept <= divert, untested, knowing, tested, level, queue, spec.OwnCost) { TurnsAtTrucks = turns }
            : new GoWithout(bad, accept <= divert, untested, knowing, tested, level, queue, spec.OwnCost) { TurnsAtTrucks = turns };
    }
}
