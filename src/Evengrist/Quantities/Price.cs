using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>Money for a bushel or a tonne of wheat.</summary>
/// <remarks>1 t = 2204.6226… lb ÷ 60 = 36.7437… bu, by definition. Not rounded. The default value is no price; using it throws.</remarks>
public readonly record struct Price : IComparable<Price>
{
    private Price(Money money, PriceUnit per)
    {
        Money = money;
        Per = per;
    }

    /// <summary>Money for one unit.</summary>
    public Money Money { get; }

    /// <summary>The unit.</summary>
    public PriceUnit Per { get; }

    /// <summary>The unit in writing: <c>bu</c> or <c>t</c>.</summary>
    /// <exception cref="InvalidOperationException">There is no price (the default value).</exception>
    public string PerText => Per switch
    {
        PriceUnit.Bushel => "bu",
        PriceUnit.Tonne => "t",
        _ => throw new InvalidOperationException("No price is stated."),
    };

    /// <summary>A price.</summary>
    /// <exception cref="ArgumentException">No currency, or not a unit.</exception>
    public static Price Of(Money money, PriceUnit per) => Enum.IsDefined(per) && per != PriceUnit.None && money.Currency.Length > 0
        ? new Price(money, per)
        : throw new ArgumentException("A price is for a bushel or a tonne.", nameof(per));

    /// <summary>Sum, in the unit of <paramref name="left"/>.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ, or one has no unit.</exception>
    public static Price operator +(Price left, Price right) => new(left.Money + right.In(left.Per).Money, left.Per);

    /// <summary>Whether <paramref name="left"/> is cheaper than <paramref name="right"/>.</summary>
    public static bool operator <(Price left, Price right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is dearer than <paramref name="right"/>.</summary>
    public static bool operator >(Price left, Price right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not dearer than <paramref name="right"/>.</summary>
    public static bool operator <=(Price left, Price right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not cheaper than <paramref name="right"/>.</summary>
    public static bool operator >=(Price left, Price right) => left.CompareTo(right) >= 0;

    /// <summary>The same price for another unit, not rounded.</summary>
    /// <exception cref="InvalidOperationException">There is no price (the default value).</exception>
    public Price In(PriceUnit per)
    {
        var bushels = Mass.FromTonnes(1m).WheatBushels;
        return (Per, per) switch
        {
            (PriceUnit.None, _) or (_, PriceUnit.None) => throw new InvalidOperationException("A price is for a bushel or a tonne."),
            (PriceUnit.Bushel, PriceUnit.Tonne) => new Price(Money * bushels, per),
            (PriceUnit.Tonne, PriceUnit.Bushel) => new Price(Money * (1m / bushels), per),
            _ => this,
        };
    }

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The currencies differ, or one has no unit.</exception>
    public int CompareTo(Price other) => Money.CompareTo(other.In(Per).Money);

    /// <summary><c>6.84 USD/bu</c>; <c>no price</c> for the default value.</summary>
    public override string ToString() => Per == PriceUnit.None ? "no price" : string.Create(CultureInfo.InvariantCulture, $"{Money}/{PerText}");
}
