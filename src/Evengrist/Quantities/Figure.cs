using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>A number as any screen or print shows it: value, unit, basis, ±, seen or reckoned, and because.</summary>
/// <remarks>
/// The value is not rounded; <see cref="Decimals"/> says how many are shown. ± is the expanded uncertainty with k = 2, which holds about 95 %.
/// A reckoned figure always says how it was reckoned.
/// </remarks>
public sealed record Figure
{
    private Figure(string what, decimal value, string unit, int decimals, Origin origin)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(what);
        ArgumentNullException.ThrowIfNull(unit);
        (What, Value, Unit, Decimals, Origin) = (what, value, unit, decimals, origin);
    }

    /// <summary>What the number is, in the words of the mill.</summary>
    public string What { get; }

    /// <summary>The number, not rounded.</summary>
    public decimal Value { get; }

    /// <summary>The unit; empty for a pure number.</summary>
    public string Unit { get; }

    /// <summary>Decimals shown.</summary>
    public int Decimals { get; }

    /// <summary>Seen or reckoned.</summary>
    public Origin Origin { get; }

    /// <summary>The moisture basis; not stated where the number has none.</summary>
    public Basis Basis { get; init; }

    /// <summary>One standard uncertainty in <see cref="Unit"/>; null where none is known.</summary>
    public decimal? StandardUncertainty { get; init; }

    /// <summary>How it was reckoned, or where it was seen; null for a seen number that needs no word.</summary>
    public Because? Because { get; init; }

    /// <summary>A seen number with the digits it was reported with.</summary>
    /// <param name="what">What it is; never empty.</param>
    /// <param name="value">The value as reported.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="basis">The basis of a share of solids.</param>
    /// <exception cref="ArgumentException">It is not said what the number is.</exception>
    public static Figure Seen(string what, decimal value, string unit, Basis basis = default) =>
        new(what, value, unit, value.Scale, Origin.Seen) { Basis = basis };

    /// <summary>A reckoned number.</summary>
    /// <param name="what">What it is; never empty.</param>
    /// <param name="value">The value, not rounded.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="decimals">Decimals shown, 0 to 28.</param>
    /// <param name="because">How it was reckoned.</param>
    /// <exception cref="ArgumentException">It is not said what the number is.</exception>
    public static Figure Reckoned(string what, decimal value, string unit, int decimals, Because because)
    {
        ArgumentNullException.ThrowIfNull(because);
        return new(what, value, unit, decimals, Origin.Reckoned) { Because = because };
    }

    /// <summary>The number in the units chosen, without basis and ±.</summary>
    public ShownValue In(UnitSystem system) => Shown.Number(Value, Unit, Decimals, system);

    /// <summary>The ± (k = 2) in the units chosen, with two figures, as the GUM advises; null where no uncertainty is known.</summary>
    public ShownValue? PlusMinus(UnitSystem system)
    {
        if (StandardUncertainty is not { } one)
        {
            return null;
        }

        var (_, unit, scale) = ShownUnit.Of(Value, Unit, system);
        var half = 2m * one * scale;
        var decimals = half > 0m ? Math.Clamp(1 - (int)Math.Floor(Math.Log10((double)half)), 0, 10) : Decimals;
        return new(Shown.Digits(half, decimals), unit);
    }

    /// <summary>Everything on one line in SI: <c>13.1 % 12mb ± 0.50 (seen)</c>.</summary>
    public override string ToString()
    {
        var basis = Basis.IsStated ? " " + Basis : "";
        var plusMinus = PlusMinus(UnitSystem.Si) is { } pm ? " ± " + pm.Value : "";
        return string.Create(CultureInfo.InvariantCulture, $"{In(UnitSystem.Si)}{basis}{plusMinus} ({(Origin == Origin.Seen ? "seen" : "reckoned")})");
    }
}
