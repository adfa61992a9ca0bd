namespace Evengrist.Streams.Additions;

/// <summary>What the United States' standard of identity lets into flour. Other markets have their own; this says nothing of them.</summary>
/// <remarks>21 CFR 137.105, as read in a copy: ask for the text in force.</remarks>
public static class AdditionLimits
{
    /// <summary>Where it was read.</summary>
    public const string Source = "21 CFR 137.105, as read in a copy: ask for the text in force; other markets have their own";

    /// <summary>Most malted barley flour, g in 100 kg: 0.75 %.</summary>
    public const double MaltGramsPer100Kg = 750;

    /// <summary>Most ascorbic acid, ppm of the flour.</summary>
    public const double AscorbicPpm = 200;

    /// <summary>Ash of a flour before something with ash of its own was put in: a·(1 + d) − d·p, d grams of it to a gram of flour.</summary>
    /// <param name="ashPercent">Ash as it was read, per cent of the flour with the addition.</param>
    /// <param name="gramsPerTonne">The dose, g to a tonne of flour.</param>
    /// <param name="additionAshPercent">Ash of what was put in, per cent.</param>
    public static double AshBefore(double ashPercent, double gramsPerTonne, double additionAshPercent) => (ashPercent * (1 + (gramsPerTonne / 1e6))) - (gramsPerTonne / 1e6 * additionAshPercent);
}
