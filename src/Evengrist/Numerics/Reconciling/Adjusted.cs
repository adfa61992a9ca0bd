namespace Evengrist.Numerics.Reconciling;

/// <summary>What became of a quantity.</summary>
/// <param name="Unknown">As it was given.</param>
/// <param name="Value">The adjusted value; where it cannot be observed, merely one that keeps the constraints.</param>
/// <param name="StandardUncertainty">One standard uncertainty of <paramref name="Value"/>; null where it cannot be observed.</param>
/// <param name="Standing">What the constraints know of it.</param>
/// <param name="Z">(measured − adjusted) over the standard uncertainty of that difference, normal with spread 1 where there is no gross error; null where it was not checked.</param>
public sealed record Adjusted(Unknown Unknown, double Value, double? StandardUncertainty, Standing Standing, double? Z)
{
    /// <summary>Adjusted less measured, in its unit; null where it was not measured.</summary>
    public double? Correction => Unknown.IsMeasured ? Value - Unknown.Value : null;
}
