using System.Globalization;

namespace Evengrist.Ledger;

/// <summary>The number of a fact in the ledger: one row of numbers for all facts, in the order in which they were recorded, from 1.</summary>
/// <param name="Value">From 1; 0 (the default) names no fact.</param>
public readonly record struct FactId(long Value) : IComparable<FactId>
{
    /// <summary>Whether left was recorded before right.</summary>
    public static bool operator <(FactId left, FactId right) => left.Value < right.Value;

    /// <summary>Whether left was recorded after right.</summary>
    public static bool operator >(FactId left, FactId right) => left.Value > right.Value;

    /// <summary>Whether left is right or was recorded before it.</summary>
    public static bool operator <=(FactId left, FactId right) => left.Value <= right.Value;

    /// <summary>Whether left is right or was recorded after it.</summary>
    public static bool operator >=(FactId left, FactId right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(FactId other) => Value.CompareTo(other.Value);

    /// <summary><c>fact 17</c>.</summary>
    public override string ToString() => "fact " + Value.ToString(CultureInfo.InvariantCulture);
}
