using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>An amount of money in one currency. Two currencies never mix.</summary>
/// <remarks>Kept as <see cref="decimal"/>, not rounded until <see cref="Rounded"/> is asked. The default value is no money in no currency; using it throws.</remarks>
public readonly record struct Money : IComparable<Money>
{
    private readonly string? currency;

    private Money(decimal amount, string currency)
    {
        Amount = amount;
        this.currency = currency;
    }

    /// <summary>The amount in units of the currency.</summary>
    public decimal Amount { get; }

    /// <summary>The currency, three letters of ISO 4217.</summary>
    /// <exception cref="InvalidOperationException">None is stated (the default value).</exception>
    public string Currency => currency ?? throw new InvalidOperationException("No currency is stated.");

    /// <summary>An amount in a currency.</summary>
    /// <param name="amount">May be negative: a discount is money too.</param>
    /// <param name="currency">Three letters A to Z, as ISO 4217 writes them; whether the code is in the list is not checked.</param>
    /// <exception cref="ArgumentException">Not three capital letters.</exception>
    public static Money Of(decimal amount, string currency) => currency is { Length: 3 } && currency.All(char.IsAsciiLetterUpper)
        ? new Money(amount, currency)
        : throw new ArgumentException($"\"{currency}\" is not a currency: write three capital letters, for example USD.", nameof(currency));

    /// <summary>Sum, in one currency.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator +(Money left, Money right) => new(left.Amount + right.In(left.Currency).Amount, left.Currency);

    /// <summary>Difference, in one currency.</summary>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Money operator -(Money left, Money right) => new(left.Amount - right.In(left.Currency).Amount, left.Currency);

    /// <summary>The amount with the other sign.</summary>
    public static Money operator -(Money value) => new(-value.Amount, value.Currency);

    /// <summary>The amount times a number, not rounded.</summary>
    public static Money operator *(Money value, decimal times) => new(value.Amount * times, value.Currency);

    /// <summary>Whether <paramref name="left"/> is less than <paramref name="right"/>.</summary>
    public static bool operator <(Money left, Money right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is more than <paramref name="right"/>.</summary>
    public static bool operator >(Money left, Money right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is not more than <paramref name="right"/>.</summary>
    public static bool operator <=(Money left, Money right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is not less than <paramref name="right"/>.</summary>
    public static bool operator >=(Money left, Money right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public int CompareTo(Money other) => Amount.CompareTo(other.In(Currency).Amount);

    /// <summary>Rounded half up to what can be paid: whole units, hundredths or thousandths, as the currency has it.</summary>
    public Money Rounded() => new(Recorded.To(Amount, CurrencyDecimals.Of(Currency)), Currency);

    /// <summary><c>6,487.58 USD</c>, at least the decimals of the currency; <c>no money</c> for the default value.</summary>
    public override string ToString() => currency is null ? "no money"
        : Amount.ToString("#,##0." + new string('0', CurrencyDecimals.Of(currency)) + "######", CultureInfo.InvariantCulture) + " " + currency;

    private Money In(string wanted) => Currency == wanted
        ? this
        : throw new InvalidOperationException($"{Currency} and {wanted} do not mix: agree a rate first.");
}
