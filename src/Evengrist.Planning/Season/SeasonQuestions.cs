using Evengrist.Planning.Season.Futures;
using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Planning.Season;

/// <summary>The questions asked of a season from outside.</summary>
public static class SeasonQuestions
{
    /// <summary>A plan that can be milled, or the linear one.</summary>
    /// <param name="spec">What it is made from.</param>
    /// <param name="millable">Whether most gates, least shares and campaigns are to be kept.</param>
    /// <param name="gapPercent">Where the plan that can be milled may stop, per cent of its cost.</param>
    /// <param name="seconds">Longest time for it.</param>
    /// <param name="stop">Stops it.</param>
    public static SeasonOutcome Plan(SeasonSpec spec, bool millable, double gapPercent, double seconds, CancellationToken stop = default) => millable
        ? SeasonPlanner.Millable(spec, new SeasonOptions { RelativeGap = gapPercent / 100, Longest = TimeSpan.FromSeconds(seconds) }, stop: stop)
        : SeasonPlanner.Linear(spec, stop: stop);

    /// <summary>What can be promised of a season: the linear plan, and futures milled after it.</summary>
    /// <param name="spec">What the plan is made from.</param>
    /// <param name="ask">What is asked of the plan.</param>
    /// <param name="progress">Is told how many futures are done.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>The promise; null with the outcome of planning where there is no plan.</returns>
    public static (PromiseOutcome? Promise, SeasonOutcome Plan) Promise(SeasonSpec spec, Func<SeasonPlan, FuturesSpec> ask, IProgress<int>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(ask);
        var plan = SeasonPlanner.Linear(spec, stop: stop);
        return (plan is SeasonPlanned { Plan: var linear } ? PromiseRun.Reckon(ask(linear), null, progress, stop) : null, plan);
    }
}
