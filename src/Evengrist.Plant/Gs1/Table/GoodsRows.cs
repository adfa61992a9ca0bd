using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Logistic units, trade items, their lots, dates, serials and counts: 00 to 30 and 37.</summary>
internal static class GoodsRows
{
    private static readonly string[] Items = ["01", "02", "03", "8006", "8026"];

    public static IEnumerable<Row> All =>
    [
        new Row("00", "logistic unit (SSCC)").Digits(18, DigitCheck, PrefixSecond).Predefined().InLink().Key(),
        new Row("01", "trade item (GTIN)").Digits(14, DigitCheck, PrefixSecond).Predefined().InLink().Without("255", "37").Key("22,10,21", "235"),
        new Row("02", "trade item contained (GTIN)").Digits(14, DigitCheck, PrefixSecond).Predefined().InLink().With("37").Without("01", "03"),
        new Row("03", "made-to-order trade item (GTIN)").Digits(14, DigitCheck, PrefixSecond).Predefined().Without("01", "02", "37", "235"),
        new Row("10", "lot").Text(20).InLink().With(Items),
        Date("11", "made on").With(Items),
        Date("12", "to be paid by").With("8020"),
        Date("13", "packed on").With(Items),
        Date("15", "best before").With(Items),
        Date("16", "sell by").With(Items),
        Date("17", "use by").With("01", "02", "03", "255", "8006", "8026"),
        new Row("20", "variant").Digits(2).Predefined().InLink().With(Items),
        new Row("21", "serial").Text(20).With("01", "03", "8006").Without("235"),
        new Row("22", "consumer's variant").Text(20).With("01"),
        new Row("235", "serial given by a third party").Text(28).With("01"),
        new Row("240", "further product number").Text(30).InLink().With(Items),
        new Row("241", "customer's part number").Text(30).InLink().With(Items),
        new Row("242", "variant made to order").DigitsUpTo(6).InLink().With("01", "02", "8006", "8026"),
        new Row("243", "packaging part").Text(20).InLink().With("01", "03"),
        new Row("250", "second serial").Text(30).InLink().With("01+21", "03+21", "8006+21"),
        new Row("251", "what it was made from").Text(30).InLink().With("01", "03", "8006"),
        new Row("253", "document (GDTI)").Digits(13, DigitCheck, PrefixFirst).Text(17).OrNone().InLink().Key(),
        new Row("254", "part of a location").Text(20).With("414"),
        new Row("255", "coupon (GCN)").Digits(13, DigitCheck, PrefixFirst).DigitsUpTo(12).OrNone().InLink().Without("01", "02", "415", "8006", "8020", "8026").Key(),
        new Row("30", "count of items").DigitsUpTo(8).InLink().With("01", "02"),
        new Row("37", "count of items contained").DigitsUpTo(8).InLink().With("00+02", "00+8026"),
    ];

    private static Row Date(string code, string words) => new Row(code, words).Digits(6, DateOrMonth).Predefined().InLink();
}
