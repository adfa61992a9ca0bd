namespace Evengrist.Numerics;

/// <summary>A point to lay a straight line through.</summary>
/// <param name="X">What was set, or the reference.</param>
/// <param name="Y">What was read.</param>
/// <param name="UncertaintyX">One standard uncertainty of <paramref name="X"/>, its unit, 0 or more.</param>
/// <param name="UncertaintyY">One standard uncertainty of <paramref name="Y"/>, its unit, 0 or more; not 0 where that of <paramref name="X"/> is.</param>
public sealed record LinePoint(double X, double Y, double UncertaintyX, double UncertaintyY);
