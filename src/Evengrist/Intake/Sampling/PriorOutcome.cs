namespace Evengrist.Intake.Sampling;

/// <summary>What earlier loads say: a <see cref="PriorFound"/>, or that they are too few.</summary>
public abstract record PriorOutcome;

/// <summary>A prior from earlier loads.</summary>
/// <param name="Prior">The prior.</param>
/// <param name="SpreadOfReadings">Standard deviation of the readings themselves on the prior's scale, test error still in it.</param>
/// <param name="TestError">Root mean square of the test error that was taken out, on the same scale.</param>
public sealed record PriorFound(LoadPrior Prior, double SpreadOfReadings, double TestError) : PriorOutcome;

/// <summary>Too few loads to say anything.</summary>
/// <param name="Loads">How many there are.</param>
/// <param name="Needed">How many are needed.</param>
public sealed record TooFewLoads(int Loads, int Needed) : PriorOutcome;
