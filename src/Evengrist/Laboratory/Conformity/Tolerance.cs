using System.Globalization;

namespace Evengrist.Laboratory.Conformity;

/// <summary>The limits of one property: a value on a limit is inside. One unit and basis, which the limits share with the results held against them.</summary>
/// <param name="Lower">The least; null for no lower limit.</param>
/// <param name="Upper">The most, above <paramref name="Lower"/>; null for no upper limit.</param>
public sealed record Tolerance(double? Lower, double? Upper)
{
    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => Lower is null && Upper is null ? "Give a lower limit, an upper limit, or both."
        : Lower is { } low && !double.IsFinite(low) || Upper is { } high && !double.IsFinite(high) ? "A limit is a finite number."
        : Lower >= Upper ? string.Create(CultureInfo.InvariantCulture, $"The lower limit {Lower} lies below the upper; got {Upper}.") : null;

    /// <summary>Whether a value is inside.</summary>
    public bool Holds(double value) => !(value < Lower) && !(value > Upper);

    /// <summary>The limits moved inwards by a guard band, outwards by a negative one; crossed limits accept nothing.</summary>
    /// <param name="guard">Width of the band in the unit of the limits.</param>
    public Tolerance Within(double guard) => new(Lower + guard, Upper - guard);

    /// <summary>Whether no value at all is inside, as after a guard band wider than the room between the limits.</summary>
    public bool IsCrossed => Lower > Upper;
}
