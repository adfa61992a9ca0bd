using System.Globalization;
using System.Numerics;

namespace Evengrist.Quantities;

/// <summary>A mass as it lies (not dry), in whole grams.</summary>
/// <remarks>
/// <para>Unit: gram. Range: that of <see cref="long"/>, ±9.2·10¹² t; overflow throws. May be negative: a difference is a mass too.</para>
/// <para>The default value is zero. Sums and differences are exact, so that in − out = stock holds with <c>==</c>.</para>
/// <para>1 lb = 453.59237 g and 1 wheat bushel = 60 lb, by definition.</para>
/// </remarks>
public readonly record struct Mass : IComparable<Mass>, IAdditionOperators<Mass, Mass, Mass>, ISubtractionOperators<Mass, Mass, Mass>,
    IUnaryNegationOperators<Mass, Mass>, IComparisonOperators<Mass, Mass, bool>, IAdditiveIdentity<Mass, Mass>
{
    /// <summary>Grams in one avoirdupois pound, by definition.</summary>
    public const decimal GramsPerPound = 453.59237m;

    /// <summary>Pounds in one bushel of wheat in settlement, whatever the test weight, by definition.</summary>
    public const decimal PoundsPerWheatBushel = 60m;

    private Mass(long grams) => Grams = grams;

    /// <summary>No mass.</summary>
    public static Mass Zero => default;

    /// <inheritdoc/>
    public static Mass AdditiveIdentity => default;

    /// <summary>The mass in whole grams.</summary>
    public long Grams { get; }

    /// <summary>The mass in kilograms, exact.</summary>
    public decimal Kilograms => Grams / 1000m;

    /// <summary>The mass in tonnes, exact.</summary>
    public decimal Tonnes => Grams / 1_000_000m;

    /// <summary>The mass in avoirdupois pounds, not rounded beyond <see cref="decimal"/>.</summary>
    public decimal Pounds => Grams / GramsPerPound;

    /// <summary>The mass in wheat bushels of 60 lb, not rounded beyond <see cref="decimal"/>.</summary>
    public decimal WheatBushels => Pounds / PoundsPerWheatBushel;

    /// <summary>A mass from whole grams.</summary>
    public static Mass FromGrams(long grams) => new(grams);

    /// <summary>A mass from kilograms, rounded half away from zero at the gram.</summary>
    /// <exception cref="OverflowException">The grams do not fit a <see cref="long"/>.</exception>
    public static Mass FromKilograms(decimal kilograms) => new(Round(kilograms * 1000m));

    /// <summary>A mass from tonnes, rounded half away from zero at the gram.</summary>
    /// <exception cref="OverflowException">The grams do not fit a <see cref="long"/>.</exception>
    public static Mass FromTonnes(decimal tonnes) => new(Round(tonnes * 1_000_000m));

    /// <summary>A mass from avoirdupois pounds, rounded half away from zero at the gram.</summary>
    /// <exception cref="OverflowException">The grams do not fit a <see cref="long"/>.</exception>
    public static Mass FromPounds(decimal pounds) => new(Round(pounds * GramsPerPound));

    /// <summary>Sum.</summary>
    public static Mass operator +(Mass left, Mass right) => new(left.Grams + right.Grams);

    /// <summary>Difference; may be negative.</summary>
    public static Mass operator -(Mass left, Mass right) => new(left.Grams - right.Grams);

    /// <summary>The mass with the other sign.</summary>
    public static Mass operator -(Mass value) => new(-value.Grams);

    /// <summary>Whether <paramref name="left"/> is less than <paramref name="right"/>.</summary>
    public static bool operator <(Mass left, Mass right) => left.Grams < right.Grams;

    /// <summary>Whether <paramref name="left"/> is more than <paramref name="right"/>.</summary>
    public static bool operator >(Mass left, Mass right) => left.Grams > right.Grams;

    /// <summary>Whether <paramref name="left"/> is at most <paramref name="right"/>.</summary>
    public static bool operator <=(Mass left, Mass right) => left.Grams <= right.Grams;

    /// <summary>Whether <paramref name="left"/> is at least <paramref name="right"/>.</summary>
    public static bool operator >=(Mass left, Mass right) => left.Grams >= right.Grams;

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Grams.CompareTo(other.Grams);

    /// <summary>
    /// Splits the mass by weights so that the parts sum to it exactly: each share is cut down to the gram and the grams left
    /// over go to the largest remainders, ties by order.
    /// </summary>
    /// <param name="weights">Non-negative, not all zero; need not sum to one.</param>
    /// <returns>One part for each weight, in the same order; their sum equals this mass.</returns>
    /// <exception cref="ArgumentException">A weight is negative or not a number, or all are zero, or the mass is negative.</exception>
    public Mass[] Split(IReadOnlyList<double> weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        if (Grams < 0)
        {
            throw new ArgumentException($"A negative mass ({this}) cannot be split.", nameof(weights));
        }

        return LargestRemainder.Split(Grams, weights).Select(FromGrams).ToArray();
    }

    /// <summary>The mass in kilograms with its unit, invariant: <c>26,340 kg</c> or <c>0.025 kg</c>.</summary>
    public override string ToString() => Kilograms.ToString("#,##0.###", CultureInfo.InvariantCulture) + " kg";

    private static long Round(decimal grams) => (long)Math.Round(grams, MidpointRounding.AwayFromZero);
}
