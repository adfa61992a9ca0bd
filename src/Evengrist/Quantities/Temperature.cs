using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>A temperature as read.</summary>
/// <remarks>Unit: °C. Range: not below −273.15. °F = 1.8 °C + 32, by definition. The default value is 0 °C.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private Temperature(decimal celsius) => Celsius = celsius;

    /// <summary>Degrees Celsius.</summary>
    public decimal Celsius { get; }

    /// <summary>Degrees Fahrenheit, not rounded.</summary>
    public decimal Fahrenheit => Celsius * 1.8m + 32m;

    /// <summary>A temperature from degrees Celsius.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero.</exception>
    public static Temperature FromCelsius(decimal celsius) => celsius >= -273.15m
        ? new Temperature(celsius)
        : throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "Nothing is colder than −273.15 °C.");

    /// <summary>A temperature from degrees Fahrenheit, not rounded beyond <see cref="decimal"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below absolute zero.</exception>
    public static Temperature FromFahrenheit(decimal fahrenheit) => FromCelsius((fahrenheit - 32m) / 1.8m);

    /// <summary>Whether <paramref name="left"/> is colder than <paramref name="right"/>.</summary>
    public static bool operator <(Temperature left, Temperature right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is warmer than <paramref name="right"/>.</summary>
    public static bool operator >(Temperature left, Temperature right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not warmer than <paramref name="right"/>.</summary>
    public static bool operator <=(Temperature left, Temperature right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not colder than <paramref name="right"/>.</summary>
    public static bool operator >=(Temperature left, Temperature right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Temperature other) => Celsius.CompareTo(other.Celsius);

    /// <summary><c>24.5 °C</c>.</summary>
    public override string ToString() => Celsius.ToString("0.###", CultureInfo.InvariantCulture) + " °C";
}
