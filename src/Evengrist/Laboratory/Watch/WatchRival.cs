namespace Evengrist.Laboratory.Watch;

/// <summary>How likely one answer is.</summary>
/// <param name="Cause">What moved.</param>
/// <param name="Probability">Of all answers together 1.</param>
/// <param name="After">Its likeliest start: after so many pairs; null for "nothing moved".</param>
/// <param name="StartProbability">How likely that start is where this answer is right; null for "nothing moved".</param>
/// <param name="Size">By how much, in the unit of the readings, over all starts by their weight; from pair to pair where it drifts, of the instrument where both moved; null for "nothing moved".</param>
/// <param name="SizeDeviation">One standard deviation of it, the start's doubt included.</param>
public sealed record WatchRival(WatchCause Cause, double Probability, int? After = null, double? StartProbability = null, double? Size = null, double? SizeDeviation = null);
