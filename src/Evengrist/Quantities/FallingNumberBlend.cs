namespace Evengrist.Quantities;

/// <summary>The falling number of a blend: the mass average of the liquefaction numbers, turned back into seconds.</summary>
/// <param name="FallingNumber">What to expect of the blend.</param>
/// <param name="PlainAverageSeconds">The mass average of the seconds, which is wrong and too high; only to be shown struck through beside the right one.</param>
/// <remarks>Source of the rule and a published pair (400 s and 220 s, half and half, give 279 s): docs/model/quantities.md.</remarks>
public sealed record FallingNumberBlend(FallingNumber FallingNumber, decimal PlainAverageSeconds)
{
    /// <summary>Blends parts by mass.</summary>
    /// <param name="parts">Mass and falling number of each part; masses at least zero and not all zero.</param>
    /// <exception cref="ArgumentException">A mass is negative, all are zero, or there are no parts.</exception>
    /// <exception cref="InvalidOperationException">A part has no reading.</exception>
    public static FallingNumberBlend Of(IReadOnlyList<(Mass Mass, FallingNumber FallingNumber)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double grams = 0, activity = 0;
        decimal seconds = 0;
        var (least, most) = (double.MaxValue, double.MinValue);
        foreach (var (mass, reading) in parts)
        {
            if (mass < Mass.Zero)
            {
                throw new ArgumentException($"A part of a blend is at least zero; got {mass}.", nameof(parts));
            }

            grams += mass.Grams;
            activity += mass.Grams * reading.Liquefaction.Value;
            (least, most) = (Math.Min(least, reading.Liquefaction.Value), Math.Max(most, reading.Liquefaction.Value));
            seconds += mass.Tonnes * reading.Seconds;
        }

        return grams > 0
            ? new(FallingNumber.From(LiquefactionNumber.From(Math.Clamp(activity / grams, least, most))), seconds * 1_000_000m / (decimal)grams)
            : throw new ArgumentException("A blend has at least one part with a mass above zero.", nameof(parts));
    }
}
