namespace Evengrist.Quantities;

/// <summary>The recording rule of grain inspection: the next figure 5 or more goes up, less is dropped.</summary>
/// <remarks>
/// Half away from zero on the decimal value, so 2.45 is recorded as 2.5; a <see cref="double"/> cannot hold 2.45 and must not be used here.
/// Source: 7 CFR 810.104 with its examples 6.36 → 6.4, 0.35 → 0.4, 2.45 → 2.5, 8.34 → 8.3, 1.22 → 1.2.
/// </remarks>
public static class Recorded
{
    /// <summary>A value as it is recorded.</summary>
    /// <param name="value">The value as found, any unit.</param>
    /// <param name="decimals">Decimals kept, 0 to 28.</param>
    /// <exception cref="ArgumentOutOfRangeException">The decimals lie outside 0 to 28.</exception>
    public static decimal To(decimal value, int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, 28);
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero);
    }
}
