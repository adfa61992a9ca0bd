namespace Evengrist.Laboratory.Watch;

/// <summary>One start of one rival.</summary>
/// <param name="After">How many pairs came before it.</param>
/// <param name="LogOdds">Natural logarithm of its odds against "nothing moved", the chance of a change included.</param>
/// <param name="Size">Size by least squares: of the instrument's move where both moved, a pair's step where it drifts.</param>
/// <param name="SizeDeviation">One standard deviation of it, the start taken as known.</param>
internal readonly record struct ChangeStart(int After, double LogOdds, double Size, double SizeDeviation);
