namespace Evengrist.Intake.Sampling;

/// <summary>A value on whose side a load's worth or bin hangs.</summary>
/// <param name="At">The edge as a true value: at or above it the upper side counts. In the unit and on the basis of the reading it is set against.</param>
/// <param name="Name">What it is called there: <c>step 13.0</c>, <c>at least 12.5</c>.</param>
/// <param name="Below">What holds below, in words; may be empty.</param>
/// <param name="Above">What holds at or above, in words; may be empty.</param>
public sealed record Edge(double At, string Name, string Below = "", string Above = "");
