using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>What an item is and where it went through: 7001 to 7041 and 710 to 7242.</summary>
internal static class OriginRows
{
    private static readonly string[] Goods = ["01", "02", "03"];

    public static IEnumerable<Row> All =>
    [
        new Row("7001", "NATO stock number").Digits(13).InLink().With("01", "02", "8006", "8026"),
        new Row("7002", "meat cut").Text(30).InLink().With("01", "02"),
        new Row("7003", "use by, with the time").Digits(6, Date).Digits(4, HourAndMinute).InLink().With(Goods),
        new Row("7004", "active potency").DigitsUpTo(4).InLink().With("01+10", "03+10"),
        new Row("7005", "catch area").Text(12).InLink().With("01", "02"),
        new Row("7006", "first frozen on").Digits(6, Date).InLink().With("01", "02"),
        new Row("7007", "harvested on, or from and until").Digits(6, Date).Digits(6, Date).OrNone().InLink().With("01", "02"),
        new Row("7008", "species for fishery").Text(3).InLink().With("01", "02"),
        new Row("7009", "fishing gear").Text(10).InLink().With("01", "02"),
        new Row("7010", "method of production").Text(2).InLink().With(Goods),
        new Row("7011", "test by, with the time").Digits(6, Date).Digits(4, HourAndMinute).OrNone().InLink().With(Goods),
        new Row("7020", "refurbishment lot").Text(20).InLink().With("01+416", "03+416", "8006+416"),
        new Row("7021", "functional status").Text(20).InLink().With("01", "03", "8006"),
        new Row("7022", "revision").Text(20).InLink().With("01+7021", "03+7021", "8006+7021"),
        new Row("7023", "assembly (GIAI)").Text(30, PrefixFirst).InLink(),
        .. Row.Family("703", 0, 9, "processor, with its country", r => r.Digits(3, CountryOr999).Text(27).InLink().With("01", "02")),
        new Row("7040", "unique identification by EU 2018/574").Digits(1).Letters(1).Letters(1).Letters(1, ImporterIndex),
        new Row("7041", "kind of freight unit").Text(4, PackageType).With("00"),
        Reimbursed("710", "Germany, PZN"), Reimbursed("711", "France, CIP"), Reimbursed("712", "Spain, CN"), Reimbursed("713", "Brazil, DRN"),
        Reimbursed("714", "Portugal, AIM"), Reimbursed("715", "United States, NDC"), Reimbursed("716", "Italy, AIC"), Reimbursed("717", "Costa Rica, SRN"),
        .. Row.Family("723", 0, 9, "certificate", r => r.Letters(2).Text(28).InLink().With("01", "8004")),
    ];

    private static Row Reimbursed(string code, string words) => new Row(code, "national healthcare number: " + words).Text(20).InLink().With("01");
}
