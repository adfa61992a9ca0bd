namespace Evengrist.Laboratory.Rings;

/// <summary>One property of one mill's flour, as its own laboratory reports it.</summary>
/// <param name="Mill">The mill.</param>
/// <param name="Laboratory">Who read it.</param>
/// <param name="Mean">Mean of its results.</param>
/// <param name="Deviation">Standard deviation of them, above 0.</param>
/// <param name="Count">How many, at least 2.</param>
public sealed record MillFigures(string Mill, string Laboratory, double Mean, double Deviation, int Count);
