using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>Moisture of grain or flour on the wet basis: water over the whole mass as it lies.</summary>
/// <remarks>
/// <para>Unit: per cent. Range: 0 ≤ moisture &lt; 100. Kept as reported, digits and all. The default value is 0 %, dry matter.</para>
/// <para>Model: docs/model/quantities.md.</para>
/// </remarks>
public readonly record struct Moisture : IComparable<Moisture>
{
    private Moisture(decimal percent) => Percent = percent;

    /// <summary>Per cent, wet basis, as reported.</summary>
    public decimal Percent { get; }

    /// <summary>Fraction of the whole mass, for models: 0 ≤ w &lt; 1.</summary>
    public double Fraction => (double)Percent / 100;

    /// <summary>Water over dry matter in per cent: 100 M/(100 − M).</summary>
    public decimal PercentOfDryMatter => 100m * Percent / (100m - Percent);

    /// <summary>The basis that a share read on this very material is stated on.</summary>
    public Basis AsBasis => Basis.At(Percent);

    /// <summary>Moisture from per cent, wet basis.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside 0 ≤ moisture &lt; 100.</exception>
    public static Moisture FromPercent(decimal percent) => percent is >= 0m and < 100m
        ? new Moisture(percent)
        : throw new ArgumentOutOfRangeException(nameof(percent), percent, "Moisture on the wet basis lies from 0 up to, not including, 100 %.");

    /// <summary>Moisture from a model's fraction, 0 ≤ w &lt; 1, cut to the 15 figures a <see cref="double"/> is good for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not a number or lies outside the range.</exception>
    public static Moisture FromFraction(double fraction) => fraction is >= 0 and < 1
        ? FromPercent((decimal)(fraction * 100))
        : throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "Moisture on the wet basis lies from 0 up to, not including, 1.");

    /// <summary>Moisture from water over dry matter in per cent: M = 100 m/(100 + m).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative.</exception>
    public static Moisture FromPercentOfDryMatter(decimal percent) => percent >= 0m
        ? FromPercent(100m * percent / (100m + percent))
        : throw new ArgumentOutOfRangeException(nameof(percent), percent, "Water over dry matter is at least 0 %.");

    /// <summary>Whether <paramref name="left"/> is drier than <paramref name="right"/>.</summary>
    public static bool operator <(Moisture left, Moisture right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is moister than <paramref name="right"/>.</summary>
    public static bool operator >(Moisture left, Moisture right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not moister than <paramref name="right"/>.</summary>
    public static bool operator <=(Moisture left, Moisture right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not drier than <paramref name="right"/>.</summary>
    public static bool operator >=(Moisture left, Moisture right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Moisture other) => Percent.CompareTo(other.Percent);

    /// <summary>Mass lost, in per cent, when grain dries to <paramref name="final"/> and loses nothing but water: 100 (M₁ − M₂)/(100 − M₂).</summary>
    /// <param name="final">Moisture after drying; not above this one.</param>
    /// <exception cref="ArgumentOutOfRangeException">The final moisture lies above this one: that is wetting.</exception>
    public decimal ShrinkPercentTo(Moisture final) => final <= this
        ? 100m * (Percent - final.Percent) / (100m - final.Percent)
        : throw new ArgumentOutOfRangeException(nameof(final), final, $"Drying cannot end wetter than it began ({this}).");

    /// <summary><c>14.2 % wet basis</c>.</summary>
    public override string ToString() => Percent.ToString(CultureInfo.InvariantCulture) + " % wet basis";
}
