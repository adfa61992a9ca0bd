using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>A plan as it was asked for: what it was made from, and what came of it.</summary>
/// <param name="Spec">What it was made from.</param>
/// <param name="Remarks">What was left out or supposed.</param>
/// <param name="Linear">The linear plan, or why there is none.</param>
public sealed record YearPlan(SeasonSpec Spec, IReadOnlyList<string> Remarks, SeasonOutcome Linear)
{
    /// <summary>The plan; null where there is none.</summary>
    public SeasonPlan? Best => (Linear as SeasonPlanned)?.Plan;
}
