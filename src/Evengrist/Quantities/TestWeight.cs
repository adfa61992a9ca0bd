using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>Test weight: the mass of grain that fills a standard volume in a standard way. Keeps the raw reading and its convention.</summary>
/// <remarks>
/// <para>Range: 20 to 100 kg/hL. Order and equality go by kg/hL. The default value is no reading; using it throws.</para>
/// <para>Plain volume arithmetic (1.287 × lb/bu) is not offered: no instrument packs like that. Model: docs/model/quantities.md.</para>
/// </remarks>
public readonly record struct TestWeight : IComparable<TestWeight>
{
    /// <summary>kg/hL in one pound per Avery (imperial) bushel. Source: Canadian Grain Commission, test weight calculators.</summary>
    public const decimal PerAveryPound = 1.247m;

    private TestWeight(decimal raw, TestWeightConvention convention)
    {
        Raw = raw;
        Convention = convention;
    }

    /// <summary>The value as read, in the unit of its convention.</summary>
    public decimal Raw { get; }

    /// <summary>How it was read.</summary>
    public TestWeightConvention Convention { get; }

    /// <summary>The formula that carries the raw reading to kg/hL, for showing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no reading (the default value).</exception>
    public TestWeightFormula Formula => TestWeightFormula.Of(Convention);

    /// <summary>kg/hL by the formula of its convention, not rounded.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no reading (the default value).</exception>
    public decimal KilogramsPerHectolitre => Formula.ToKilogramsPerHectolitre(Raw);

    /// <summary>Whether the convention is one for durum.</summary>
    public bool IsDurum => Convention is TestWeightConvention.UsDurum or TestWeightConvention.CanadianDurum;

    /// <summary>Pounds per Avery (imperial) bushel: kg/hL ÷ 1.247, not rounded.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no reading (the default value).</exception>
    public decimal AveryPounds => KilogramsPerHectolitre / PerAveryPound;

    /// <summary>A reading in the unit of a convention.</summary>
    /// <param name="raw">The value as read.</param>
    /// <param name="convention">How it was read.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not a convention, or outside 20 to 100 kg/hL.</exception>
    public static TestWeight Read(decimal raw, TestWeightConvention convention) =>
        TestWeightFormula.Of(convention).ToKilogramsPerHectolitre(raw) is >= 20m and <= 100m
            ? new TestWeight(raw, convention)
            : throw new ArgumentOutOfRangeException(nameof(raw), raw, "A test weight lies from 20 to 100 kg/hL. Is the unit right?");

    /// <summary>A reading from the unit written on a ticket and whether the wheat is durum.</summary>
    /// <param name="raw">The value as read.</param>
    /// <param name="unit"><c>kg/hL</c>, <c>lb/bu</c> or <c>g/0.5L</c>.</param>
    /// <param name="durum">Whether the wheat is durum: it has its own equation.</param>
    /// <exception cref="ArgumentException">Not a unit of test weight, or outside 20 to 100 kg/hL.</exception>
    public static TestWeight Read(decimal raw, string unit, bool durum) => Read(raw, ConventionOf(unit, durum));

    /// <summary>The convention of a unit written on a ticket.</summary>
    /// <param name="unit"><c>kg/hL</c>, <c>lb/bu</c> or <c>g/0.5L</c>.</param>
    /// <param name="durum">Whether the wheat is durum: it has its own equation.</param>
    /// <exception cref="ArgumentException">Not a unit of test weight.</exception>
    public static TestWeightConvention ConventionOf(string unit, bool durum) => unit switch
    {
        "kg/hL" => TestWeightConvention.KilogramsPerHectolitre,
        "lb/bu" => durum ? TestWeightConvention.UsDurum : TestWeightConvention.UsWheat,
        "g/0.5L" => durum ? TestWeightConvention.CanadianDurum : TestWeightConvention.CanadianWheat,
        _ => throw new ArgumentException($"\"{unit}\" is not a unit of test weight: write kg/hL, lb/bu or g/0.5L.", nameof(unit)),
    };

    /// <summary>Whether <paramref name="left"/> is lighter than <paramref name="right"/>.</summary>
    public static bool operator <(TestWeight left, TestWeight right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is heavier than <paramref name="right"/>.</summary>
    public static bool operator >(TestWeight left, TestWeight right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not heavier than <paramref name="right"/>.</summary>
    public static bool operator <=(TestWeight left, TestWeight right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not lighter than <paramref name="right"/>.</summary>
    public static bool operator >=(TestWeight left, TestWeight right) => left.CompareTo(right) >= 0;

    /// <summary>What an instrument of another convention would have read, not rounded: both formulas through kg/hL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a convention, or there is no reading.</exception>
    public decimal In(TestWeightConvention convention) => convention == Convention
        ? Raw
        : TestWeightFormula.Of(convention).FromKilogramsPerHectolitre(KilogramsPerHectolitre);

    /// <summary>Pounds per Winchester bushel as the Canadian calculators give it: 0.1552 × grams in half a litre, not rounded.</summary>
    /// <exception cref="InvalidOperationException">The reading was not taken in grams in half a litre.</exception>
    public decimal CanadianWinchesterPounds() => Convention is TestWeightConvention.CanadianWheat or TestWeightConvention.CanadianDurum
        ? 0.1552m * Raw
        : throw new InvalidOperationException($"{this} was not read in g/0.5L; the US formula goes through In(UsWheat) or In(UsDurum).");

    /// <inheritdoc/>
    public int CompareTo(TestWeight other) => KilogramsPerHectolitre.CompareTo(other.KilogramsPerHectolitre);

    /// <summary>Whether both are as heavy in kg/hL, however each was read.</summary>
    public bool Equals(TestWeight other) => Convention == TestWeightConvention.None || other.Convention == TestWeightConvention.None
        ? Convention == other.Convention
        : KilogramsPerHectolitre == other.KilogramsPerHectolitre;

    /// <inheritdoc/>
    public override int GetHashCode() => Convention == TestWeightConvention.None ? 0 : KilogramsPerHectolitre.GetHashCode();

    /// <summary>The raw reading with its unit: <c>60.1 lb/bu</c>, <c>60 lb/bu durum</c>; <c>no reading</c> for the default value.</summary>
    public override string ToString() => Convention == TestWeightConvention.None ? "no reading"
        : Raw.ToString(CultureInfo.InvariantCulture) + " " + Formula.Unit + (IsDurum ? " durum" : "");
}
