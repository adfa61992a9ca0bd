using System.Globalization;
using Evengrist.Planning.Season;
using Evengrist.Planning.Season.Futures;
using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Web.Sights.Season;

/// <summary>A plan as it was asked for: what it was made from, the linear plan, and the work on one that can be milled.</summary>
/// <param name="Spec">What it was made from.</param>
/// <param name="Remarks">What was left out or supposed.</param>
/// <param name="Linear">The linear plan, or why there is none.</param>
public sealed record YearPlan(SeasonSpec Spec, IReadOnlyList<string> Remarks, SeasonOutcome Linear)
{
    private SeasonPlan? earlier;

    /// <summary>The work on a plan that can be milled; null until somebody asks for it.</summary>
    public LongWork<SeasonOutcome>? Work { get; private set; }

    /// <summary>The work on a promise; null until somebody asks for one.</summary>
    public LongWork<PromiseOutcome>? Promising { get; private set; }

    /// <summary>What can be promised of the best plan; null where nothing has been reckoned for it.</summary>
    public Promised? Promised => Promising?.Outcome is Promised done && done.Promise.Spec.Plan == ToFollow ? done : null;

    /// <summary>The best plan with what wheat is worth by the linear one, for futures to be milled by; null where there is no plan.</summary>
    public SeasonPlan? ToFollow => Best is { } best && Linear is SeasonPlanned linear ? best with { Duals = linear.Plan.Duals } : null;

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
            Work = YearWork.Plan<SeasonOutcome>((progress, stop) => longer ? SeasonPlanner.Polish(Spec, null, progress, stop) : SeasonPlanner.Millable(Spec, null, progress, stop), failed => failed);
        }
    }

    /// <summary>Begins to reckon a promise; nothing while one is being reckoned.</summary>
    /// <param name="asked">What is asked, of <see cref="ToFollow"/>.</param>
    public void Promise(FuturesSpec asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        if (Promising is null or { IsRunning: false })
        {
            Promising = LongWork.Begin<PromiseOutcome>(
                (tell, stop) => PromiseRun.Reckon(asked, null, new Telling<int>(done => tell(new WorkStep(string.Create(CultureInfo.InvariantCulture, $"{done:N0} of {asked.Futures:N0} futures"), (double)done / asked.Futures))), stop),
                why => new NotPromised([new SeasonFault("the reckoning", why)]));
        }
    }

    /// <summary>Stops what work goes on.</summary>
    public void Stop()
    {
        Work?.Stop();
        Promising?.Stop();
    }
}
