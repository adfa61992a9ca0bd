namespace Evengrist.Milling.Sifting;

/// <summary>Share of a particle size that stays over a cloth, with half of the size <c>d50</c> staying. Forms from memory; constants derived.</summary>
public static class PartitionCurve
{
    /// <summary>Exponent of the logistic curve for a ratio of the sizes of which three and one quarters stay: k = 2 ln 3 / ln(d₇₅/d₂₅).</summary>
    public static double LogisticExponent(double ratio75To25) => 2 * Math.Log(3) / Math.Log(ratio75To25);

    /// <summary>Exponent of the Rosin-Rammler curve for the same ratio: m = ln(ln 4 / ln(4/3)) / ln(d₇₅/d₂₅).</summary>
    public static double RosinRammlerExponent(double ratio75To25) => Math.Log(Math.Log(4) / Math.Log(4.0 / 3)) / Math.Log(ratio75To25);

    /// <summary>Logistic in the logarithm of size: 1 / (1 + (d₅₀/d)^k).</summary>
    public static double Logistic(double size, double half, double exponent) => size <= 0 ? 0 : 1 / (1 + Math.Pow(half / size, exponent));

    /// <summary>Rosin-Rammler: 1 − exp(−ln 2 (d/d₅₀)^m).</summary>
    public static double RosinRammler(double size, double half, double exponent) => 1 - Math.Exp(-Math.Log(2) * Math.Pow(size / half, exponent));
}
