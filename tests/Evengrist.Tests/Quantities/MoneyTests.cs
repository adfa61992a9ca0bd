using Evengrist.Quantities;

namespace Evengrist.Tests.Quantities;

public sealed class MoneyTests
{
    [Fact]
    public void Operators_TwoCurrencies_Refused()
    {
        var (dollars, euros) = (Money.Of(1m, "USD"), Money.Of(1m, "EUR"));
        Assert.Throws<InvalidOperationException>(() => dollars + euros);
        Assert.Throws<InvalidOperationException>(() => dollars - euros);
        Assert.Throws<InvalidOperationException>(() => dollars < euros);
        Assert.Throws<InvalidOperationException>(() => default(Money) + dollars);
    }

    [Theory]
    [InlineData("usd")]
    [InlineData("$")]
    [InlineData("")]
    [InlineData(null)]
    public void Of_NotACurrency_Refused(string? currency) => Assert.Throws<ArgumentException>(() => Money.Of(1m, currency!));

    // Decimals of the currencies: ISO 4217, from memory.
    [Theory]
    [InlineData("2.345", "USD", "2.35 USD")]
    [InlineData("-2.345", "USD", "-2.35 USD")]
    [InlineData("1234.5", "JPY", "1,235. JPY")]
    [InlineData("1.2345", "KWD", "1.235 KWD")]
    public void Rounded_HalfUp_AtTheCurrencysOwnDecimals(string amount, string currency, string expected) =>
        Assert.Equal(expected.Replace(". ", " ", StringComparison.Ordinal), Money.Of(Num.Of(amount), currency).Rounded().ToString());

    [Fact]
    public void Price_PerTonne_IsTheBushelPriceTimesBushelsInATonne()
    {
        // 36.7437 bu/t: unit conversion factors of a state wheat commission.
        var perTonne = Price.Of(Money.Of(1m, "USD"), PriceUnit.Bushel).In(PriceUnit.Tonne);
        Num.Near(36.7437m, perTonne.Money.Amount, 0.00005m);
        Num.Near(1m, perTonne.In(PriceUnit.Bushel).Money.Amount, 1e-20m);
        Assert.Equal("6.84 USD/bu", Price.Of(Money.Of(6.84m, "USD"), PriceUnit.Bushel).ToString());
    }

    [Fact]
    public void Price_NoUnit_Refused() => Assert.Throws<ArgumentException>(() => Price.Of(Money.Of(1m, "USD"), PriceUnit.None));
}
