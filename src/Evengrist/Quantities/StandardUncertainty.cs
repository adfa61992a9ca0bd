using System.Globalization;
using MathNet.Numerics.Distributions;

namespace Evengrist.Quantities;

/// <summary>One standard uncertainty of a value, in the value's unit.</summary>
/// <remarks>
/// <para>Range: at least 0, finite. Independent contributions combine in quadrature (the GUM, JCGM 100). The default value is 0 of no unit: nothing is known.</para>
/// <para>The chance to lie beyond an edge takes the value as normal: Φ((y − edge)/u), after JCGM 106:2012. Model: docs/model/quantities.md.</para>
/// </remarks>
public readonly record struct StandardUncertainty : IComparable<StandardUncertainty>
{
    private readonly string? unit;

    private StandardUncertainty(double value, string unit)
    {
        Value = value;
        this.unit = unit;
    }

    /// <summary>One standard uncertainty.</summary>
    public double Value { get; }

    /// <summary>The unit of the value it belongs to; empty where it has none.</summary>
    public string Unit => unit ?? "";

    /// <summary>A standard uncertainty.</summary>
    /// <param name="value">At least 0, finite.</param>
    /// <param name="unit">The unit of the value it belongs to, for example <c>%</c> or <c>s</c>.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not a finite number.</exception>
    public static StandardUncertainty Of(double value, string unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return double.IsFinite(value) && value >= 0
            ? new StandardUncertainty(value, unit)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "An uncertainty is a finite number of at least 0.");
    }

    /// <summary>Whether <paramref name="left"/> is smaller than <paramref name="right"/>.</summary>
    public static bool operator <(StandardUncertainty left, StandardUncertainty right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is larger than <paramref name="right"/>.</summary>
    public static bool operator >(StandardUncertainty left, StandardUncertainty right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not larger than <paramref name="right"/>.</summary>
    public static bool operator <=(StandardUncertainty left, StandardUncertainty right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not smaller than <paramref name="right"/>.</summary>
    public static bool operator >=(StandardUncertainty left, StandardUncertainty right) => left.CompareTo(right) >= 0;

    /// <summary>Independent contributions together: √Σu².</summary>
    /// <exception cref="InvalidOperationException">The units differ.</exception>
    public StandardUncertainty With(StandardUncertainty other) => new(double.Hypot(Value, other.In(Unit).Value), Unit);

    /// <summary>Half the width of the range the value lies in: k·u; k = 2 holds about 95 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not above 0.</exception>
    public double Expanded(double factor = 2) => factor > 0
        ? factor * Value
        : throw new ArgumentOutOfRangeException(nameof(factor), factor, "A coverage factor is above 0.");

    /// <summary>The chance, 0 to 1, that the true value is at least an edge when <paramref name="read"/> was found: Φ((y − edge)/u); 0 or 1 where u = 0.</summary>
    /// <param name="read">The value found, in <see cref="Unit"/>.</param>
    /// <param name="edge">The edge, in <see cref="Unit"/>.</param>
    public double ChanceAtLeast(double read, double edge) => Value > 0
        ? Normal.CDF(0, 1, (read - edge) / Value)
        : read >= edge ? 1 : 0;

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The units differ.</exception>
    public int CompareTo(StandardUncertainty other) => Value.CompareTo(other.In(Unit).Value);

    /// <summary><c>u = 0.25 %</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"u = {Value:0.######} {Unit}").TrimEnd();

    private StandardUncertainty In(string wanted) => Unit == wanted
        ? this
        : throw new InvalidOperationException($"An uncertainty in \"{Unit}\" does not go with one in \"{wanted}\".");
}
