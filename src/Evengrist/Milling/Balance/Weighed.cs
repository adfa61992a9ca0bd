namespace Evengrist.Milling.Balance;

/// <summary>What a weigher or meter showed over the span of a balance.</summary>
/// <param name="Tonnes">As it lay, t; 0 or more.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it, t, the weigher's shared error over the whole span included.</param>
public sealed record Weighed(double Tonnes, double StandardUncertainty)
{
    /// <summary>A mass with an uncertainty in per cent of it.</summary>
    public static Weighed Of(double tonnes, double percent) => new(tonnes, Math.Abs(tonnes) * percent / 100);
}

/// <summary>A moisture over the span of a balance, as a mean.</summary>
/// <param name="Percent">Per cent, wet basis; 0 up to, not including, 100.</param>
/// <param name="StandardUncertainty">One standard uncertainty of it, points.</param>
public sealed record MeanMoisture(double Percent, double StandardUncertainty);
