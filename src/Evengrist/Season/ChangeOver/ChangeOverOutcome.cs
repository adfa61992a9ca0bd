using Evengrist.Ledger;

namespace Evengrist.Season.ChangeOver;

/// <summary>What comes of laying a change of crop out.</summary>
public abstract record ChangeOverOutcome;

/// <summary>The steps, flour by flour.</summary>
/// <param name="Flours">In the order asked.</param>
public sealed record ChangeOverLaid(IReadOnlyList<FlourChangeOver> Flours) : ChangeOverOutcome;

/// <summary>What was asked cannot be meant.</summary>
/// <param name="Faults">Every fault found.</param>
public sealed record ChangeOverRefused(IReadOnlyList<SeasonFault> Faults) : ChangeOverOutcome;

/// <summary>A flour through the change.</summary>
/// <param name="Flour">Its code.</param>
/// <param name="Steps">One for each share of new crop.</param>
/// <param name="LargestStep">The largest step of share at which no property is expected to move, its spread twice over included, by more than its largest move; 1 where none is named.</param>
public sealed record FlourChangeOver(string Flour, IReadOnlyList<ChangeStep> Steps, double LargestStep);

/// <summary>One step.</summary>
/// <param name="Share">New crop in the mix, 0 to 1.</param>
/// <param name="FirstDay">Number of the day it begins, from 0.</param>
/// <param name="Moves">One for each property that is known of both crops and averages.</param>
public sealed record ChangeStep(double Share, int FirstDay, IReadOnlyList<PropertyMove> Moves);

/// <summary>What a step does to a property of the wheat mix.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">Expected, in its usual unit, on the basis of the old mix.</param>
/// <param name="Spread">Standard deviation of it.</param>
/// <param name="Move">Against the step before.</param>
/// <param name="MoveSpread">Standard deviation of the move.</param>
/// <param name="Kept">Chance that the flour's limits on it are kept; null where it has none.</param>
public sealed record PropertyMove(Property What, double Value, double Spread, double Move, double MoveSpread, double? Kept);
