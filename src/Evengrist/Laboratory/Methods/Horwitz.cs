namespace Evengrist.Laboratory.Methods;

/// <summary>What laboratories usually reach at a mass fraction, whatever the method [Horwitz and Thompson, from memory]. For information: moisture, protein and ash are measured far better, so no limit is set from it.</summary>
public static class Horwitz
{
    private const double FlatBelow = 1.2e-7, RootAbove = 0.138, FlatPercent = 22;

    /// <summary>Relative standard deviation between laboratories by the formula alone, %: 2·C^−0.1505.</summary>
    /// <param name="massFraction">C, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction cannot be.</exception>
    public static double FormulaPercent(double massFraction)
    {
        Demand(massFraction);
        return 2 * Math.Pow(massFraction, -0.1505);
    }

    /// <summary>Standard deviation between laboratories as a mass fraction: 22 % of C below 1.2·10⁻⁷, 0.01·√C above 0.138, 0.02·C^0.8495 between.</summary>
    /// <param name="massFraction">C, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The fraction cannot be.</exception>
    public static double StandardDeviation(double massFraction)
    {
        Demand(massFraction);
        return massFraction < FlatBelow ? FlatPercent / 100 * massFraction
            : massFraction > RootAbove ? 0.01 * Math.Sqrt(massFraction)
            : 0.02 * Math.Pow(massFraction, 0.8495);
    }

    /// <summary>A found relative standard deviation over the usual one; 0.5 to 2 is usual.</summary>
    /// <param name="foundPercent">Relative standard deviation between laboratories as found, %; at least 0.</param>
    /// <param name="massFraction">C, above 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure cannot be.</exception>
    public static double Ratio(double foundPercent, double massFraction)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(foundPercent);
        return foundPercent / 100 * massFraction / StandardDeviation(massFraction);
    }

    private static void Demand(double massFraction)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(massFraction);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(massFraction, 1);
    }
}
