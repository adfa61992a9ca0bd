namespace Evengrist.Bins.Storage;

/// <summary>The form of an equation between the moisture of grain, its temperature, and the humidity of the air that neither wets nor dries it.</summary>
/// <remarks>M in per cent of dry matter, T in °C, RH as a fraction. Model: docs/model/equilibrium-moisture.md.</remarks>
public enum EmcForm
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Modified Henderson: RH = 1 − exp(−A (T + C) M^B).</summary>
    Henderson = 1,

    /// <summary>Modified Chung-Pfost: RH = exp(−(A/(T + C)) exp(−B M)).</summary>
    ChungPfost = 2,

    /// <summary>Modified Oswin: RH = 1/(1 + ((A + B T)/M)^C).</summary>
    Oswin = 3,

    /// <summary>Modified Halsey: RH = exp(−exp(A + B T) M^(−C)).</summary>
    Halsey = 4,
}
