namespace Evengrist.Milling.OnPaper;

/// <summary>A figure of the model with what it may be off by.</summary>
/// <param name="Value">The figure.</param>
/// <param name="Uncertainty">One standard uncertainty, same unit.</param>
public sealed record Estimate(double Value, double Uncertainty);
