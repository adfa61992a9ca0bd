namespace Evengrist.Quantities;

/// <summary>How a reckoned number came about.</summary>
/// <param name="Formula">The formula in words or symbols; never empty.</param>
/// <param name="Inputs">The numbers that went in, each of which can be opened in turn.</param>
/// <param name="Source">Where the formula stands: a standard, a contract with its version, "by definition"; never empty.</param>
public sealed record Because(string Formula, IReadOnlyList<Figure> Inputs, string Source);
