using MathNet.Numerics.Distributions;

namespace Evengrist.Laboratory.Bake;

/// <summary>A dough property of a blend before it is measured: a linear guess, and how far such guesses were off before. Never a fact: dough properties do not add up.</summary>
/// <param name="Linear">Σ share × property.</param>
/// <param name="Residual">Mean of measured less guessed of former blends; null where fewer than three are known.</param>
/// <param name="PlusMinus">Half the interval the next blend lies in with 95 %, as far as former ones tell; null likewise.</param>
/// <param name="Words">What it is, in a sentence.</param>
public sealed record BlendGuess(double Linear, double? Residual, double? PlusMinus, string Words)
{
    private const int LeastKnown = 3;

    /// <summary>Linear guess and learnt residual together.</summary>
    public double Guess => Linear + (Residual ?? 0);

    /// <summary>Guesses a blend.</summary>
    /// <param name="parts">Share of each flour (of the blend's flour, summing to 1) and its property.</param>
    /// <param name="known">Former blends of like flours: linear guess and measured.</param>
    /// <exception cref="ArgumentException">The shares are no shares of a whole.</exception>
    public static BlendGuess Of(IReadOnlyList<(double Share, double Value)> parts, IReadOnlyList<(double Guessed, double Measured)> known)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(known);
        if (parts.Count == 0 || parts.Any(p => p.Share is < 0 or > 1) || Math.Abs(parts.Sum(p => p.Share) - 1) > 1e-6)
        {
            throw new ArgumentException("Shares lie from 0 to 1 and sum to 1.", nameof(parts));
        }

        var linear = parts.Sum(p => p.Share * p.Value);
        if (known.Count < LeastKnown)
        {
            return new(linear, null, null, $"A linear guess alone, no fact: {(known.Count == 0 ? "no blend was" : $"{known.Count} {(known.Count == 1 ? "blend was" : "blends were")}")} measured before, and {LeastKnown} are needed to say how far it may be off. Bake it.");
        }

        double[] off = [.. known.Select(k => k.Measured - k.Guessed)];
        var (n, mean) = (off.Length, off.Average());
        var s = Math.Sqrt(off.Sum(o => (o - mean) * (o - mean)) / (n - 1));
        return new(linear, mean, StudentT.InvCDF(0, 1, n - 1, 0.975) * s * Math.Sqrt(1 + (1.0 / n)), $"A guess, no fact: linear, moved by what {n} former blends were off, and ± as they scatter. Bake it before anything rests on it.");
    }
}
