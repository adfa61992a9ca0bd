using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;

namespace Evengrist.Plant.Answers;

/// <summary>An advice in plain values. A named person decides.</summary>
public sealed record DecisionAnswer(string Advised, string Words, IReadOnlyList<RulingAnswer> Rulings, IReadOnlyList<string> StillToAsk, string Note)
{
    /// <summary>The advice in plain values.</summary>
    public static DecisionAnswer Of(LoadAdvice advice)
    {
        ArgumentNullException.ThrowIfNull(advice);
        return new(LoadDecision.WordsOf(advice.Kind), advice.Words, [.. advice.Rulings.Select(RulingAnswer.Of)], advice.StillToAsk, "An advice: a named person decides. Local law and the site's food-safety plan prevail.");
    }
}

/// <summary>What one rule makes of the load.</summary>
public sealed record RulingAnswer(string Kind, string Reason, string Source, string Mark, string Caution)
{
    internal static RulingAnswer Of(Ruling ruling) => new(LoadDecision.WordsOf(ruling.Kind), ruling.Reason, ruling.Source, ruling.Mark.Words(), ruling.Caution);
}
