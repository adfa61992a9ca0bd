namespace Evengrist.Laboratory.Watch;

/// <summary>One start of one rival.</summary>
/// <param name="After">How many pairs came before it.</param>
/// <param name="LogFit">Natural logarithm of how many times better the pairs fit it than "nothing moved".</param>
/// <param name="Size">Size by least squares: of the instrument's move where both moved, a pair's step where it drifts.</param>
/// <param name="SizeDeviation">One standard deviation of it, the start taken as known.</param>
internal readonly record struct ChangeStart(int After, double LogFit, double Size, double SizeDeviation);
