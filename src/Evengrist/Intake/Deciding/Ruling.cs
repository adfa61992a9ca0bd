using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Deciding;

/// <summary>What one rule makes of a load.</summary>
/// <param name="Kind">The least that has to be decided by this rule.</param>
/// <param name="Reason">Why, in a sentence with the numbers.</param>
/// <param name="Source">Where the rule stands.</param>
/// <param name="Mark">How well the rule is known here.</param>
public sealed record Ruling(LoadDecisionKind Kind, string Reason, string Source, SourceMark Mark)
{
    /// <summary>What to take care of before anybody touches the load; empty where nothing is to be said.</summary>
    public string Caution { get; init; } = "";
}
