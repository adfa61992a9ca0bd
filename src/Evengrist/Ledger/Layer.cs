using System.Globalization;

namespace Evengrist.Ledger;

/// <summary>Part of a parcel lying in a place, or drawn from it.</summary>
/// <param name="Parcel">The parcel's number in the parcel graph it came from.</param>
/// <param name="Grams">How much of it; reckoned, so not a whole number. At least 0.</param>
public readonly record struct Layer(int Parcel, double Grams) : IComparable<Layer>
{
    /// <summary>Whether left comes before right: by parcel, then by grams.</summary>
    public static bool operator <(Layer left, Layer right) => left.CompareTo(right) < 0;

    /// <summary>Whether left comes after right.</summary>
    public static bool operator >(Layer left, Layer right) => left.CompareTo(right) > 0;

    /// <summary>Whether left is right or comes before it.</summary>
    public static bool operator <=(Layer left, Layer right) => left.CompareTo(right) <= 0;

    /// <summary>Whether left is right or comes after it.</summary>
    public static bool operator >=(Layer left, Layer right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Layer other) => Parcel != other.Parcel ? Parcel.CompareTo(other.Parcel) : Grams.CompareTo(other.Grams);

    /// <summary><c>12.5 kg of parcel 17</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Grams / 1000:0.###} kg of parcel {Parcel}");
}
