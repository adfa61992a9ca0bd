using Evengrist.Quantities;

namespace Evengrist.Intake.Paying;

/// <summary>What one cause moved the pay of several loads by, rounded at the end.</summary>
/// <param name="What">The cause as tickets name it.</param>
/// <param name="Money">Positive for a premium, negative for a discount.</param>
public sealed record PayCause(string What, Money Money);
