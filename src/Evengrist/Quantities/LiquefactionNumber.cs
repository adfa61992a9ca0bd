using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>How much starch-splitting activity grain or flour has, on a scale that averages by mass: LN = 6000/(FN − 50).</summary>
/// <remarks>
/// No unit. Range: at least 6000/950 (1000 s) and at most 600 (60 s), as for <see cref="FallingNumber"/>. The default value is none: reading it throws.
/// Source: the usual relation of the trade (constants 6000 and 50). Model: docs/model/quantities.md.
/// </remarks>
public readonly record struct LiquefactionNumber : IComparable<LiquefactionNumber>
{
    private readonly double value;

    private LiquefactionNumber(double value) => this.value = value;

    /// <summary>The number, no unit.</summary>
    /// <exception cref="InvalidOperationException">None was given (the default value).</exception>
    public double Value => value > 0 ? value : throw new InvalidOperationException("No liquefaction number is given.");

    /// <summary>A liquefaction number, 6.3157… ≤ LN ≤ 600.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number or outside the range.</exception>
    public static LiquefactionNumber From(double value) => value is >= 6000.0 / 950 and <= 600
        ? new LiquefactionNumber(value)
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A liquefaction number lies from 6.32 (1000 s) to 600 (60 s).");

    /// <summary>Whether <paramref name="left"/> is less active than <paramref name="right"/>.</summary>
    public static bool operator <(LiquefactionNumber left, LiquefactionNumber right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is more active than <paramref name="right"/>.</summary>
    public static bool operator >(LiquefactionNumber left, LiquefactionNumber right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not more active than <paramref name="right"/>.</summary>
    public static bool operator <=(LiquefactionNumber left, LiquefactionNumber right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not less active than <paramref name="right"/>.</summary>
    public static bool operator >=(LiquefactionNumber left, LiquefactionNumber right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(LiquefactionNumber other) => value.CompareTo(other.value);

    /// <summary><c>LN 17.14</c>; the number has no unit.</summary>
    public override string ToString() => value > 0 ? "LN " + value.ToString("0.00", CultureInfo.InvariantCulture) : "no LN";
}
