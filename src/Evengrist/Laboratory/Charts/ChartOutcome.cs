namespace Evengrist.Laboratory.Charts;

/// <summary>A chart.</summary>
/// <param name="Limits">Limits of the values or means.</param>
/// <param name="Spreads">Limits of the ranges or standard deviations.</param>
/// <param name="Sigma">One standard deviation of single values, as <paramref name="From"/> finds it.</param>
/// <param name="From">How it was found.</param>
/// <param name="Period">From how many of the first the limits were taken.</param>
/// <param name="Points">Every value or group.</param>
/// <param name="Within">Capability by <paramref name="Sigma"/>; null without limits of the flour.</param>
/// <param name="Overall">Capability by the standard deviation of all single values of the period.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record ChartOutcome(
    ControlLimits Limits, ControlLimits Spreads, double Sigma, SigmaEstimate From, int Period, IReadOnlyList<ChartPoint> Points, Capability? Within, Capability? Overall, IReadOnlyList<string> Remarks);
