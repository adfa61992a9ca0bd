using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>The most of a toxin or impurity that a market allows.</summary>
/// <param name="What">The property.</param>
/// <param name="Stage">Where the limit holds.</param>
/// <param name="Most">The limit, in <paramref name="Unit"/>, of the goods as they lie.</param>
/// <param name="Unit">A unit of the property.</param>
/// <param name="Source">The rule.</param>
/// <param name="Mark">How well it is known here.</param>
/// <param name="BlendDown">Whether lots above the limit may be mixed with others until it is met; off unless the mill, with authority, says so.</param>
public sealed record MarketLimit(Property What, LimitStage Stage, decimal Most, string Unit, string Source, SourceMark Mark, bool BlendDown = false)
{
    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => !Enum.IsDefined(What) || !Readings.UnitsOf(What).Contains(Unit)
        ? $"A limit of {What} in \"{Unit}\" cannot be: use {string.Join(" or ", Readings.UnitsOf(What))}."
        : Most < 0m ? $"The limit of {What.Words()} is at least 0." : null;
}
