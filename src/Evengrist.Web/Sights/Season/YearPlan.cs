using Evengrist.Planning.Season;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>A plan as it was asked for: what it was made from, the linear plan, and the work on one that can be milled.</summary>
/// <param name="Spec">What it was made from.</param>
/// <param name="Remarks">What was left out or supposed.</param>
/// <param name="Linear">The linear plan, or why there is none.</param>
public sealed record YearPlan(SeasonSpec Spec, IReadOnlyList<string> Remarks, SeasonOutcome Linear)
{
    private SeasonPlan? earlier;

    /// <summary>The work on a plan that can be milled; null until somebody asks for it.</summary>
    public YearWork? Work { get; private set; }

    /// <summary>The best plan there is: one that can be milled before the linear one; null where there is none.</summary>
    public SeasonPlan? Best => Found ?? (Linear as SeasonPlanned)?.Plan;

    private SeasonPlan? Found => (Work?.Outcome as SeasonPlanned)?.Plan is { } found && !(earlier?.Costs.Total <= found.Costs.Total) ? found : earlier;

    /// <summary>What is wrong with the last work; empty where nothing is.</summary>
    public string Failure => Work?.Outcome switch { SeasonFailed failed => failed.Reason, SeasonInfeasible => "No plan that can be milled keeps all that has to be kept.", _ => "" };

    /// <summary>Begins to look for a plan that can be milled, or for a better one; nothing while it is being looked for.</summary>
    public void Mill()
    {
        if (Work is null or { IsRunning: false })
        {
            earlier = Found;
            var longer = earlier is not null;
            Work = YearWork.Begin((progress, stop) => longer ? SeasonPlanner.Polish(Spec, null, progress, stop) : SeasonPlanner.Millable(Spec, null, progress, stop));
        }
    }

    /// <summary>Stops the work, if any goes on.</summary>
    public void Stop() => Work?.Stop();
}
