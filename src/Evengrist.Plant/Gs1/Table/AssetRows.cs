using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Assets, parts, services, signatures and coupons: 8001 to 8200.</summary>
internal static class AssetRows
{
    public static IEnumerable<Row> All =>
    [
        new Row("8001", "roll: width, length, core, winding, splices").Digits(4, NotZero).Digits(5, NotZero).Digits(3, NotZero).Digits(1, Winding).Digits(1).InLink().With("01"),
        new Row("8002", "mobile telephone").Text(20).InLink(),
        new Row("8003", "returnable asset (GRAI)").Digits(1, Zero).Digits(13, DigitCheck, PrefixFirst).Text(16).OrNone().InLink().Key(),
        new Row("8004", "asset (GIAI)").Text(30, PrefixFirst).InLink().Key("7040"),
        new Row("8005", "price per unit").Digits(6).InLink().With("01", "02"),
        new Row("8006", "piece of a trade item (ITIP)").Digits(14, DigitCheck, PrefixSecond).Digits(4, PieceOfTotal).InLink().Without("01", "03", "37").Key("22,10,21"),
        new Row("8007", "bank account (IBAN)").Text(34, BankAccount).InLink().With("415"),
        new Row("8008", "made on, with the time").Digits(6, Date).Digits(2, Hour).Digits(2, Minute).OrNone().Digits(2, Second).OrNone().InLink().With("01", "02", "03"),
        new Row("8009", "optically readable sensor").Text(50).InLink().With("00", "01", "03"),
        new Row("8010", "component or part (CPID)").Component(30, PrefixFirst).InLink().Key("8011"),
        new Row("8011", "serial of a component").DigitsUpTo(12, NoZeroBefore).With("8010"),
        new Row("8012", "software version").Text(20).InLink().With("01", "03", "8006"),
        new Row("8013", "model (GMN)").Text(25, PairCheck, PrefixFirst).InLink().Key(),
        new Row("8014", "highly individualised device (MUDI)").Text(25, PairCheck, PrefixFirst, NotDigitsAlone).With("01"),
        new Row("8017", "provider of a service (GSRN)").Digits(18, DigitCheck, PrefixFirst).InLink().Without("8018").Key("8019"),
        new Row("8018", "recipient of a service (GSRN)").Digits(18, DigitCheck, PrefixFirst).InLink().Without("8017").Key("8019"),
        new Row("8019", "instance of a service relation").DigitsUpTo(10).With("8017", "8018"),
        new Row("8020", "payment slip").Text(25).With("415"),
        new Row("8026", "piece of a trade item contained").Digits(14, DigitCheck, PrefixSecond).Digits(4, PieceOfTotal).InLink().With("37").Without("02", "03", "8006"),
        new Row("8030", "digital signature").Base64(90).InLink().With("00", "01+21", "03+21", "253", "255", "8003", "8004", "8006+21", "8010+8011", "8017", "8018"),
        new Row("8040", "mobile equipment, first").Digits(15).With("01+21"),
        new Row("8041", "mobile equipment, second").Digits(15).With("01+21+8040"),
        new Row("8042", "embedded SIM").Digits(32).With("01+21+8040"),
        new Row("8043", "physical SIM").Digits(18).DigitsUpTo(2).OrNone().With("01+21+8040"),
        new Row("8110", "coupon of North America").Text(70, CouponCode).InLink(),
        new Row("8111", "points of a coupon").Digits(4).InLink().With("255"),
        new Row("8112", "coupon of North America from an offer file").Text(70, CouponOffer).InLink(),
        new Row("8200", "page about the item").Text(70).With("01"),
    ];
}
