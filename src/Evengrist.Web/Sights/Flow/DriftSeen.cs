using Evengrist.Milling.Drift;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Records.Milling;

namespace Evengrist.Web.Sights.Flow;

/// <summary>What a unit's kept tests tell: how well the mill is known by them, and what drifted.</summary>
/// <param name="Fit">The mill tuned to them, or why it is not.</param>
/// <param name="Outcome">What drifted. Money is at a price of flour of one more than feed: so it is tonnes of flour in 24 h.</param>
/// <param name="Flour">Yield of all flour at the newest test, per cent of the wheat to first break; null where the mill is not tuned.</param>
/// <param name="Before">The same before any test.</param>
/// <param name="CannotTell">What the tests cannot tell apart.</param>
/// <param name="Next">Release tests that would make the yield of all flour surest, the best first.</param>
public sealed record DriftSeen(MillFitOutcome Fit, DriftOutcome Outcome, Estimate? Flour, Estimate? Before, IReadOnlyList<Confused> CannotTell, IReadOnlyList<NextTest> Next)
{
    private static readonly DriftPrices Tonnes = new(1, 0);

    /// <summary>The work of tuning to the tests and looking through them, begun where nobody asked it yet of these tests.</summary>
    /// <param name="shelf">Where work is kept.</param>
    /// <param name="tunings">Where tunings are kept.</param>
    /// <param name="history">The tests.</param>
    /// <param name="again">Whether what was stopped is begun anew.</param>
    public static LongWork<DriftSeen> Work(WorkShelf shelf, MillTunings tunings, MillTestHistory history, bool again)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(tunings);
        ArgumentNullException.ThrowIfNull(history);
        return shelf.WorkOn(history.Mark, nameof(DriftSeen), () => LongWork.Begin<DriftSeen>(
            (tell, stop) => Of(tunings, history, doing =>
            {
                tell(new WorkStep(doing, null));
                return !stop.IsCancellationRequested;
            }),
            why => new DriftSeen(new MillNotTuned([why]), new DriftNotLooked([why]), null, null, [], [])), again);
    }

    private static DriftSeen Of(MillTunings tunings, MillTestHistory history, Func<string, bool> goOn)
    {
        var fit = tunings.Of(history.MillTests, goOn);
        var outcome = MillDrift.Of(history.Tests, fit, Tonnes, goOn);
        if (fit is not MillTuned { Tuning: var tuning })
        {
            return new DriftSeen(fit, outcome, null, null, [], []);
        }

        var newest = history.Tests[^1].Test;
        Estimate Flour(MillTuning known) => MillForecast.Of(newest.Sheet, newest.Wheat, known).Flour.YieldPercent;
        return new DriftSeen(fit, outcome, Flour(tuning), Flour(MillTuning.None(newest.Sheet)), Confused.Of(newest.Sheet, newest.Wheat, tuning), [.. NextTest.Of(newest.Sheet, newest.Wheat, tuning).Take(3)]);
    }
}
