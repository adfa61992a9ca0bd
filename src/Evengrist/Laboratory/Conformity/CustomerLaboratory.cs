namespace Evengrist.Laboratory.Conformity;

/// <summary>The laboratory that measures the lot again where it arrives.</summary>
/// <param name="Uncertainty">Standard uncertainty of its result, its own sampling included; at least 0.</param>
/// <param name="Bias">How much higher than the true value it reads; often its difference from ours, known from ring tests. 0 where none is known.</param>
/// <param name="BiasUncertainty">Standard uncertainty of <paramref name="Bias"/>, at least 0.</param>
public sealed record CustomerLaboratory(double Uncertainty, double Bias = 0, double BiasUncertainty = 0)
{
    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => Uncertainty >= 0 && BiasUncertainty >= 0 && double.IsFinite(Uncertainty) && double.IsFinite(BiasUncertainty) && double.IsFinite(Bias) ? null
        : "The customer's laboratory has an uncertainty of at least 0 and a bias that is a number.";

    /// <summary>The chance, 0 to 1, that its one result on one sample lies outside the limits, for what is known here of the lot's mean.</summary>
    /// <param name="lot">What is known of the lot's mean.</param>
    /// <param name="within">The lot's own spread: its sample is one part of the lot.</param>
    /// <param name="tolerance">The limits it judges by.</param>
    public double Rejects(NormalBelief lot, double within, Tolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return 1 - lot.Plus(Bias, double.Hypot(double.Hypot(Uncertainty, BiasUncertainty), within)).Inside(tolerance);
    }
}
