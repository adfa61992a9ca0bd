using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>The value of a property in a sample.</summary>
/// <param name="Value">In the unit asked for, not rounded; 0 where it is missing.</param>
/// <param name="State">Where it comes from.</param>
/// <param name="Figure">It as a figure; null where it is missing.</param>
internal sealed record FoundValue(decimal Value, FoundState State, Figure? Figure)
{
    public static FoundValue Missing { get; } = new(0m, FoundState.Missing, null);
}
