using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>A share carried by the solids of grain or flour (protein, ash, wet gluten, toxin …), always on a stated moisture basis.</summary>
/// <remarks>
/// <para>
/// Keeps the value and basis as stated and knows the dry-matter value. X_t = X_i (100 − M_t)/(100 − M_i) carries it to any basis.
/// Not for test weight, falling number or counts. Range: 0 to all of the dry matter.
/// </para>
/// <para>
/// Order and equality go by the dry-matter value (rounded at the 15th decimal): 13.2 % dry equals 11.616 % 12mb. The default value states nothing;
/// reading it throws. Model: docs/model/quantities.md.
/// </para>
/// </remarks>
public readonly record struct SolidsShare : IComparable<SolidsShare>
{
    /// <summary>Protein over nitrogen for wheat and flour. Source: 21 CFR 137.105.</summary>
    public const decimal WheatProteinPerNitrogen = 5.7m;

    private readonly decimal dry;

    private SolidsShare(decimal value, ShareUnit unit, Basis basis, decimal dry)
    {
        Value = value;
        Unit = unit;
        Basis = basis;
        this.dry = dry;
    }

    /// <summary>The value as stated, in <see cref="Unit"/> on <see cref="Basis"/>.</summary>
    public decimal Value { get; }

    /// <summary>The unit as stated.</summary>
    public ShareUnit Unit { get; }

    /// <summary>The basis as stated.</summary>
    public Basis Basis { get; }

    /// <summary>The value on dry matter, in <see cref="Unit"/>.</summary>
    /// <exception cref="InvalidOperationException">Nothing was stated (the default value).</exception>
    public decimal DryValue => ValueOn(Basis.Dry);

    /// <summary>Fraction of the dry matter, for models.</summary>
    /// <exception cref="InvalidOperationException">Nothing was stated (the default value).</exception>
    public double DryFraction => (double)Stated.dry;

    private SolidsShare Stated => Unit != ShareUnit.None
        ? this
        : throw new InvalidOperationException("No share is stated: give a value with its basis, for example 13.1 % 12mb.");

    /// <summary>A share in per cent on a stated basis.</summary>
    /// <exception cref="ArgumentException">The basis is not stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or more than all of the dry matter.</exception>
    public static SolidsShare Percent(decimal value, Basis basis) => Make(value, ShareUnit.Percent, basis);

    /// <summary>A share in mg/kg (ppm) on a stated basis.</summary>
    /// <exception cref="ArgumentException">The basis is not stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Negative, or more than all of the dry matter.</exception>
    public static SolidsShare MilligramsPerKilogram(decimal value, Basis basis) => Make(value, ShareUnit.MilligramsPerKilogram, basis);

    /// <summary>A share in per cent from a model's fraction of the dry matter, stated dry.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a number, or outside 0 to 1.</exception>
    public static SolidsShare FromDryFraction(double fraction) => fraction is >= 0 and <= 1
        ? Percent((decimal)(fraction * 100), Basis.Dry)
        : throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "A fraction of the dry matter lies from 0 to 1.");

    /// <summary>Reads <c>13.1 % 12mb</c>, <c>14.9 % dry</c>, <c>0.8 mg/kg 12mb</c> or <c>0.8 ppm dry</c>; a number without a basis is refused.</summary>
    /// <param name="text">A number with a decimal point, a unit and a basis.</param>
    /// <param name="share">What was read; the default value where it was refused.</param>
    /// <param name="fault">What is wrong and what to write instead; empty where nothing is.</param>
    public static bool TryParse(string? text, out SolidsShare share, out string fault) => SolidsShareText.TryRead(text, out share, out fault);

    /// <summary>Whether <paramref name="left"/> is less of the dry matter than <paramref name="right"/>.</summary>
    public static bool operator <(SolidsShare left, SolidsShare right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is more of the dry matter than <paramref name="right"/>.</summary>
    public static bool operator >(SolidsShare left, SolidsShare right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not more of the dry matter than <paramref name="right"/>.</summary>
    public static bool operator <=(SolidsShare left, SolidsShare right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not less of the dry matter than <paramref name="right"/>.</summary>
    public static bool operator >=(SolidsShare left, SolidsShare right) => left.CompareTo(right) >= 0;

    /// <summary>The value carried to another basis, in <see cref="Unit"/>, not rounded: X (100 − M_t)/(100 − M_i). Exact as stated on its own basis.</summary>
    /// <exception cref="InvalidOperationException">Nothing was stated, or the wanted basis is not stated.</exception>
    public decimal ValueOn(Basis wanted) => Stated.Basis.Restated(Value, wanted);

    /// <summary>The same share stated on another basis, not rounded.</summary>
    /// <exception cref="InvalidOperationException">Nothing was stated, or the wanted basis is not stated.</exception>
    public SolidsShare On(Basis wanted) => new(ValueOn(wanted), Unit, wanted, dry);

    /// <summary>Protein reckoned from this share read as nitrogen: times 5.7 for wheat and flour, on the same basis.</summary>
    /// <exception cref="InvalidOperationException">Nothing was stated.</exception>
    public SolidsShare ProteinFromNitrogen() => Make(Stated.Value * WheatProteinPerNitrogen, Unit, Basis);

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">One of the two is the default value.</exception>
    public int CompareTo(SolidsShare other) => Stated.dry.CompareTo(other.Stated.dry);

    /// <summary>Whether both say the same of the dry matter, on whatever basis each is stated.</summary>
    public bool Equals(SolidsShare other) => dry == other.dry && (Unit == ShareUnit.None) == (other.Unit == ShareUnit.None);

    /// <inheritdoc/>
    public override int GetHashCode() => dry.GetHashCode();

    /// <summary><c>13.1 % 12mb</c>, <c>0.8 mg/kg dry</c>; <c>no share</c> for the default value.</summary>
    public override string ToString() => Unit == ShareUnit.None ? "no share"
        : Value.ToString(CultureInfo.InvariantCulture) + (Unit == ShareUnit.Percent ? " % " : " mg/kg ") + Basis;

    private static SolidsShare Make(decimal value, ShareUnit unit, Basis basis)
    {
        if (!basis.IsStated)
        {
            throw new ArgumentException("A share needs a moisture basis: say dry, 12mb, 14mb or another.", nameof(basis));
        }

        var whole = unit == ShareUnit.Percent ? 100m : 1_000_000m;
        var dry = Math.Round(value / whole * 100m / (100m - basis.MoisturePercent), 15, MidpointRounding.AwayFromZero);
        return dry is >= 0m and <= 1m
            ? new SolidsShare(value, unit, basis, dry)
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A share lies from 0 to all of the dry matter.");
    }
}
