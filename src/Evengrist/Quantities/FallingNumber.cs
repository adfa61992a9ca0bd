using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>Falling number: seconds that a plunger needs through a heated paste of meal or flour; low means sprouted grain.</summary>
/// <remarks>
/// <para>Unit: second. Range: 60 (nothing but the stirring time) to 1000. Kept as reported. The default value is no reading; using it throws.</para>
/// <para>Falling numbers are never averaged: a blend goes by <see cref="FallingNumberBlend"/>. Model: docs/model/quantities.md.</para>
/// </remarks>
public readonly record struct FallingNumber : IComparable<FallingNumber>
{
    private readonly decimal seconds;

    private FallingNumber(decimal seconds) => this.seconds = seconds;

    /// <summary>Seconds as reported.</summary>
    /// <exception cref="InvalidOperationException">There is no reading (the default value).</exception>
    public decimal Seconds => seconds > 0m ? seconds : throw new InvalidOperationException("No falling number was read.");

    /// <summary>The same on the scale that averages by mass: 6000/(FN − 50).</summary>
    /// <exception cref="InvalidOperationException">There is no reading (the default value).</exception>
    public LiquefactionNumber Liquefaction => LiquefactionNumber.From(6000 / ((double)Seconds - 50));

    /// <summary>A falling number from seconds, 60 to 1000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static FallingNumber FromSeconds(decimal seconds) => seconds is >= 60m and <= 1000m
        ? new FallingNumber(seconds)
        : throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "A falling number lies from 60 to 1000 s.");

    /// <summary>The falling number of a liquefaction number: 6000/LN + 50 s, rounded at the microsecond.</summary>
    /// <exception cref="InvalidOperationException">None was given (the default value).</exception>
    public static FallingNumber From(LiquefactionNumber number) =>
        FromSeconds(Math.Clamp(Math.Round((decimal)(6000 / number.Value + 50), 6, MidpointRounding.AwayFromZero), 60m, 1000m));

    /// <summary>Whether <paramref name="left"/> is more sprouted than <paramref name="right"/>.</summary>
    public static bool operator <(FallingNumber left, FallingNumber right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is sounder than <paramref name="right"/>.</summary>
    public static bool operator >(FallingNumber left, FallingNumber right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not sounder than <paramref name="right"/>.</summary>
    public static bool operator <=(FallingNumber left, FallingNumber right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not more sprouted than <paramref name="right"/>.</summary>
    public static bool operator >=(FallingNumber left, FallingNumber right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(FallingNumber other) => seconds.CompareTo(other.seconds);

    /// <summary><c>385 s</c>; <c>no reading</c> for the default value.</summary>
    public override string ToString() => seconds > 0m ? seconds.ToString("0.#", CultureInfo.InvariantCulture) + " s" : "no reading";
}
