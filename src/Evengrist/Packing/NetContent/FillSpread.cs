namespace Evengrist.Packing.NetContent;

/// <summary>How net weights of a line spread, from gross weights and empty packages.</summary>
/// <param name="Gross">Standard deviation of gross weights, grams, within and between checks together.</param>
/// <param name="Tare">Standard deviation of empty packages, grams.</param>
public sealed record FillSpread(double Gross, double Tare = 0)
{
    /// <summary>Standard deviation of net weights, grams: √(gross² − tare²), where fill and package do not depend on each other.</summary>
    public double Net => Math.Sqrt((Gross * Gross) - (Tare * Tare));

    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault => !double.IsFinite(Gross) || !double.IsFinite(Tare) || Gross <= 0 || Tare < 0 ? "Gross weights have a standard deviation above 0 and empty packages one of at least 0."
        : Tare >= Gross ? $"Empty packages spread by {Tare:0.###} g, no less than gross weights by {Gross:0.###} g: one of the two is wrong." : null;
}
