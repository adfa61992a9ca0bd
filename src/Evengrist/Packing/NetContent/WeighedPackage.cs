using NodaTime;

namespace Evengrist.Packing.NetContent;

/// <summary>One package on a checkweigher.</summary>
/// <param name="At">When, to the millisecond.</param>
/// <param name="GrossTenths">Gross weight, tenths of a gram.</param>
/// <param name="TareTenths">What was taken off for the empty package, tenths of a gram.</param>
/// <param name="IsRejected">Whether the line threw it out.</param>
public readonly record struct WeighedPackage(Instant At, int GrossTenths, int TareTenths, bool IsRejected) : IComparable<WeighedPackage>
{
    /// <summary>Net weight by that tare, grams.</summary>
    public double NetGrams => (GrossTenths - TareTenths) / 10.0;

    /// <summary>As <c>25044.5 g net (25224.5 − 180.0) at 2026-01-14T17:55:07Z</c>, and whether it was thrown out.</summary>
    public override string ToString() => FormattableString.Invariant($"{NetGrams:0.0} g net ({GrossTenths / 10.0:0.0} − {TareTenths / 10.0:0.0}) at {At}{(IsRejected ? ", thrown out" : "")}");

    /// <summary>By moment, weight, tare and rejection.</summary>
    public int CompareTo(WeighedPackage other) => (At, GrossTenths, TareTenths, IsRejected).CompareTo((other.At, other.GrossTenths, other.TareTenths, other.IsRejected));

    /// <summary>Whether one comes before another.</summary>
    public static bool operator <(WeighedPackage left, WeighedPackage right) => left.CompareTo(right) < 0;

    /// <summary>Whether one comes after another.</summary>
    public static bool operator >(WeighedPackage left, WeighedPackage right) => left.CompareTo(right) > 0;

    /// <summary>Whether one comes before another or is the same.</summary>
    public static bool operator <=(WeighedPackage left, WeighedPackage right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one comes after another or is the same.</summary>
    public static bool operator >=(WeighedPackage left, WeighedPackage right) => left.CompareTo(right) >= 0;
}
