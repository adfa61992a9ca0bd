namespace Evengrist.Milling.Grinding;

/// <summary>The cumulative breakage function of batch grinding: of what breaks of a parent of size d, the share finer than x is φ(x/d)^γ + (1 − φ)(x/d)^β.</summary>
/// <remarks>Form from memory (population balance of grinding).</remarks>
/// <param name="Phi">Share of the fine part, 0 to 1.</param>
/// <param name="Gamma">Exponent of the fine part; above 0.</param>
/// <param name="Beta">Exponent of the coarse part; above 0.</param>
public sealed record Austin(double Phi, double Gamma, double Beta)
{
    /// <summary>Share finer than z = x/d: 0 at 0, 1 at 1, rising.</summary>
    public double Finer(double z) => z switch
    {
        <= 0 => 0,
        >= 1 => 1,
        _ => (Phi * Math.Pow(z, Gamma)) + ((1 - Phi) * Math.Pow(z, Beta)),
    };
}
