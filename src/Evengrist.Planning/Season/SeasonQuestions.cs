using Evengrist.Season;

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
}
