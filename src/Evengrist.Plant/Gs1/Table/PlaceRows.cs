using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Orders, consignments, parties, places and countries: 400 to 427.</summary>
internal static class PlaceRows
{
    private static readonly string[] Goods = ["01", "02", "03"];

    public static IEnumerable<Row> All =>
    [
        new Row("400", "customer's order").Text(30).InLink(),
        new Row("401", "consignment (GINC)").Text(30, PrefixFirst).InLink().Key(),
        new Row("402", "shipment (GSIN)").Digits(17, DigitCheck, PrefixFirst).InLink().Key(),
        new Row("403", "route").Text(30).InLink().With("00"),
        Place("410", "ship to"),
        Place("411", "bill to"),
        Place("412", "bought from"),
        Place("413", "ship for, to be sent on to"),
        Place("414", "location").Key("254", "7040"),
        Place("415", "pay to").With("8020").Key("8020"),
        Place("416", "made or done at"),
        Place("417", "party").Key("7040"),
        new Row("420", "ship to post code").Text(20).InLink().Without("421"),
        new Row("421", "ship to country and post code").Digits(3, Country).Text(9).InLink().Without("4307"),
        new Row("422", "country of origin").Digits(3, Country).InLink().With("01", "02", "03", "8006", "8026").Without("426"),
        Countries("423", "countries of first processing"),
        new Row("424", "country of processing").Digits(3, Country).InLink().With(Goods).Without("426"),
        Countries("425", "countries of taking apart"),
        new Row("426", "country of all processing").Digits(3, Country).InLink().With(Goods),
        new Row("427", "part of the country of origin").Text(3).InLink().With("01+422", "02+422", "03+422"),
    ];

    private static Row Place(string code, string words) => new Row(code, words).Digits(13, DigitCheck, PrefixFirst).Predefined().InLink();

    private static Row Countries(string code, string words)
    {
        var row = new Row(code, words).Digits(3, Country);
        for (var more = 1; more < 5; more++)
        {
            row = row.Digits(3, Country).OrNone();
        }

        return row.InLink().With(Goods).Without("426");
    }
}
