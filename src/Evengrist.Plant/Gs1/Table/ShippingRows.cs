using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Where a logistic unit goes and how it is to be handled: 4300 to 4333.</summary>
internal static class ShippingRows
{
    public static IEnumerable<Row> All =>
    [
        .. Address("430", "ship to"),
        Unit("4307", "ship to country").Letters(2, CountryLetters),
        Unit("4308", "ship to telephone").Text(30),
        Unit("4309", "ship to latitude and longitude").Digits(10, Latitude).Digits(10, Longitude),
        .. Address("431", "return to"),
        Unit("4317", "return to country").Letters(2, CountryLetters),
        Unit("4318", "return to post code").Text(20),
        Unit("4319", "return to telephone").Text(30),
        Unit("4320", "service").Text(35, PercentWritten),
        Unit("4321", "dangerous goods").Digits(1, YesOrNo),
        Unit("4322", "may be left").Digits(1, YesOrNo),
        Unit("4323", "signature needed").Digits(1, YesOrNo),
        Unit("4324", "not before").Digits(6, DateOrMonth).Digits(4, HourAndMinute),
        Unit("4325", "not after").Digits(6, DateOrMonth).Digits(4, HourAndMinute),
        Unit("4326", "released on").Digits(6, Date),
        Temperature("4330", "at most, hundredths of °F", "4331"),
        Temperature("4331", "at most, hundredths of °C", "4330"),
        Temperature("4332", "at least, hundredths of °F", "4333"),
        Temperature("4333", "at least, hundredths of °C", "4332"),
    ];

    private static IEnumerable<Row> Address(string stem, string words)
    {
        (string Words, int Most)[] lines = [("company", 35), ("name", 35), ("address", 70), ("address, second line", 70), ("suburb", 70), ("town", 70), ("region", 70)];
        return lines.Select((line, n) => new Row(FormattableString.Invariant($"{stem}{n}"), $"{words} {line.Words}").Text(line.Most, PercentWritten).InLink().With(n == 3 ? stem + "2" : "00"));
    }

    private static Row Unit(string code, string words) => new Row(code, words).InLink().With("00");

    private static Row Temperature(string code, string words, string other) => Unit(code, words).Digits(6).Letters(1, Hyphens).OrNone().Without(other);
}
