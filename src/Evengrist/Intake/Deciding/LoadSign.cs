using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Deciding;

/// <summary>Something smelt or seen on a load that is no number, and what it makes of the load.</summary>
/// <param name="Words">What it is called; what an observed happening says.</param>
/// <param name="Kind">The least that has to be decided.</param>
/// <param name="Reason">Why, in a sentence.</param>
/// <param name="Source">Where the rule stands.</param>
/// <param name="Mark">How well the rule is known here.</param>
public sealed record LoadSign(string Words, LoadDecisionKind Kind, string Reason, string Source, SourceMark Mark)
{
    /// <summary>What to take care of.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The same in a grade standard; none where a grade does not know it.</summary>
    public GradeObservation Graded { get; init; }
}
