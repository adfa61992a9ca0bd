namespace Evengrist.Numerics.Reconciling;

/// <summary>A quantity of a balance: measured with an error, or sought.</summary>
/// <param name="Name">What it is, for messages; each name once.</param>
/// <param name="Value">What was measured; where it was not measured, where to begin looking.</param>
/// <param name="StandardUncertainty">One standard uncertainty of the measurement in its unit, 0 or more (0: known exactly); null where it was not measured.</param>
public sealed record Unknown(string Name, double Value, double? StandardUncertainty)
{
    /// <summary>Whether it was measured.</summary>
    public bool IsMeasured => StandardUncertainty is not null;

    /// <summary>A quantity that was not measured.</summary>
    /// <param name="name">What it is.</param>
    /// <param name="start">Where to begin looking; it matters only where products of two unknowns are constrained.</param>
    public static Unknown Sought(string name, double start = 1) => new(name, start, null);
}
