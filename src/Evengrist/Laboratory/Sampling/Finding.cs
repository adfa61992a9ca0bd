using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Sampling;

/// <summary>How surely a test finds what is there. A negative test does not make a lot free, and raw flour is raw. Model: docs/model/acceptance-sampling.md.</summary>
public static class Finding
{
    /// <summary>Said with every chance to find.</summary>
    public const string Caution = "A negative test does not make a lot free: it says that what is there is rarer than the test finds. Raw flour is a raw food: label it and treat it as raw.";

    /// <summary>Chance that a portion holds at least one cell, evenly spread: 1 − e^(−λm).</summary>
    /// <param name="perGram">λ, cells to a gram, 0 or more.</param>
    /// <param name="grams">m, all portions together, 0 or more.</param>
    public static double Chance(double perGram, double grams) => -Math.Exp(-perGram * grams) + 1;

    /// <summary>Cells to a gram that are still found with a chance: −ln(1 − chance)/m.</summary>
    /// <param name="chance">Above 0 and below 1.</param>
    /// <param name="grams">m, above 0.</param>
    public static double PerGramFound(double chance, double grams) => -Math.Log(1 - chance) / grams;

    /// <summary>Units of which at least one is bad with a chance, where a share is: the least n with 1 − (1 − p)ⁿ at the chance.</summary>
    /// <param name="share">p, above 0 and below 1.</param>
    /// <param name="chance">Above 0 and below 1.</param>
    public static int UnitsFor(double share, double chance) => (int)Math.Ceiling((Math.Log(1 - chance) / Math.Log(1 - share)) - 1e-9);

    /// <summary>Between which counts the mean lies with a chance, when so many colonies were counted, by the exact way of chi-square.</summary>
    /// <param name="colonies">0 or more.</param>
    /// <param name="chance">0.95 where left alone.</param>
    public static (double Least, double Most) CountBounds(int colonies, double chance = 0.95) =>
        (colonies == 0 ? 0 : ChiSquared.InvCDF(2 * colonies, (1 - chance) / 2) / 2, ChiSquared.InvCDF((2 * colonies) + 2, (1 + chance) / 2) / 2);
}
