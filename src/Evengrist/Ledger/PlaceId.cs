using System.Globalization;

namespace Evengrist.Ledger;

/// <summary>The ledger's own number of a place; given once, in the order of opening, from 1. Never printed: people use the place's code.</summary>
/// <param name="Value">From 1; 0 (the default) names no place.</param>
public readonly record struct PlaceId(int Value) : IComparable<PlaceId>
{
    /// <summary>Whether left was opened before right.</summary>
    public static bool operator <(PlaceId left, PlaceId right) => left.Value < right.Value;

    /// <summary>Whether left was opened after right.</summary>
    public static bool operator >(PlaceId left, PlaceId right) => left.Value > right.Value;

    /// <summary>Whether left is right or was opened before it.</summary>
    public static bool operator <=(PlaceId left, PlaceId right) => left.Value <= right.Value;

    /// <summary>Whether left is right or was opened after it.</summary>
    public static bool operator >=(PlaceId left, PlaceId right) => left.Value >= right.Value;

    /// <inheritdoc/>
    public int CompareTo(PlaceId other) => Value.CompareTo(other.Value);

    /// <summary><c>place 17</c>.</summary>
    public override string ToString() => "place " + Value.ToString(CultureInfo.InvariantCulture);
}
