namespace Evengrist.Bins.Shape;

/// <summary>What comes of calibrating a pack factor.</summary>
public abstract record PackFactorOutcome;

/// <summary>A pack factor found by weighing out.</summary>
/// <param name="Factor">The factor with its uncertainty.</param>
/// <param name="Each">Factor, one standard uncertainty and weight (0 to 1) of each weigh-out.</param>
/// <param name="ChiSquare">Σ((fᵢ − f)/uᵢ)²: how well the weigh-outs agree.</param>
public sealed record PackFactorFound(PackFactor Factor, IReadOnlyList<WeighedFactor> Each, double ChiSquare) : PackFactorOutcome
{
    /// <summary>Whether the weigh-outs scatter more than their own uncertainties allow, so that the ± was widened.</summary>
    public bool IsWidened => Each.Count > 1 && ChiSquare > Each.Count - 1;
}

/// <summary>The factor of one weigh-out.</summary>
/// <param name="Code">Which.</param>
/// <param name="Factor">Its factor.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it.</param>
/// <param name="Weight">Its weight in the mean, 0 to 1.</param>
public sealed record WeighedFactor(string Code, double Factor, double StandardUncertainty, double Weight);

/// <summary>No factor can be had from these weigh-outs.</summary>
/// <param name="Reasons">Each a sentence that says what to do.</param>
public sealed record PackFactorNotFound(IReadOnlyList<string> Reasons) : PackFactorOutcome;
