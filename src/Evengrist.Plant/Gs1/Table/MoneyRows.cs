using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Amounts and prices, the last digit of the identifier says how many decimals: 3900 to 3955.</summary>
internal static class MoneyRows
{
    private static readonly string[] Measured = ["30", "31nn", "32nn", "35nn", "36nn"];

    public static IEnumerable<Row> All =>
    [
        .. Row.Family("390", 0, 9, "amount to pay, or value of a coupon", r => r.DigitsUpTo(15).InLink().With("255", "8020").Without("390n", "391n", "394n", "8111")),
        .. Row.Family("391", 0, 9, "amount to pay with its currency", r => r.Digits(3, Currency).DigitsUpTo(15).InLink().With("8020").Without("391n")),
        .. Row.Family("392", 0, 9, "price of a measured item", r => r.DigitsUpTo(15).InLink().With([.. Measured.Select(m => "01+" + m)]).Without("392n", "393n")),
        .. Row.Family("393", 0, 9, "price of a measured item with its currency", r => r.Digits(3, Currency).DigitsUpTo(15).InLink().With(Measured).Without("393n")),
        .. Row.Family("394", 0, 3, "per cent off by a coupon", r => r.Digits(4).InLink().With("255").Without("394n", "8111")),
        .. Row.Family("395", 0, 5, "price per unit of measure", r => r.Digits(6).InLink().With(Measured).Without("392n", "393n", "395n", "8005")),
    ];
}
