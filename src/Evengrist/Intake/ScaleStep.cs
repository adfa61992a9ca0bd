namespace Evengrist.Intake;

/// <summary>One line of a scale: from this value on, this effect.</summary>
/// <param name="From">The value at which the step begins, in the unit of the factor; included.</param>
/// <param name="Effect">Money for each unit of the price, or per cent of the mass.</param>
public sealed record ScaleStep(decimal From, decimal Effect);
