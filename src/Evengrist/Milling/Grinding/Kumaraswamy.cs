namespace Evengrist.Milling.Grinding;

/// <summary>The double normalised Kumaraswamy breakage function: what share of a product is finer than a size, the size as a share z of the greatest.</summary>
/// <remarks>P(z) = α[1 − (1 − z^m₁)^n₁] + (1 − α)[1 − (1 − z^m₂)^n₂]. Its first part is a peak of middling sizes, its second many small pieces and large bran. Form from memory; the two types are read in abstracts of the first-break work.</remarks>
/// <param name="Alpha">Share of the first part, 0 to 1.</param>
/// <param name="M1">Exponent of the first part; above 0.</param>
/// <param name="N1">Exponent of the first part; above 0.</param>
/// <param name="M2">Exponent of the second part; above 0.</param>
/// <param name="N2">Exponent of the second part; above 0, below 1 for much that is large.</param>
public sealed record Kumaraswamy(double Alpha, double M1, double N1, double M2, double N2)
{
    /// <summary>Share finer than z: 0 at 0, 1 at 1, rising. A density is had by differences of this: it is infinite at 1 where N2 is below 1.</summary>
    public double Finer(double z) => z switch
    {
        <= 0 => 0,
        >= 1 => 1,
        _ => (Alpha * (1 - Math.Pow(1 - Math.Pow(z, M1), N1))) + ((1 - Alpha) * (1 - Math.Pow(1 - Math.Pow(z, M2), N2))),
    };
}
