using static Evengrist.Plant.Gs1.Checks.NamedChecks;

namespace Evengrist.Plant.Gs1.Table;

/// <summary>Persons in care and their media: 7240 to 7259.</summary>
internal static class CareRows
{
    public static IEnumerable<Row> All =>
    [
        new Row("7240", "protocol").Text(20).InLink().With("01", "8006").Without("03"),
        new Row("7241", "kind of medium").Digits(2, MediaType).InLink().With("8017", "8018"),
        new Row("7242", "version control").Text(25).InLink().With("8017", "8018"),
        new Row("7250", "born on").Digits(8, FullDate).InLink().With("8018").Without("7251"),
        new Row("7251", "born on, with the time").Digits(8, FullDate).Digits(4, HourAndMinute).InLink().With("8018").Without("7250"),
        new Row("7252", "sex").Digits(1, Sex).InLink().With("8018"),
        new Row("7253", "family name").Text(40, PercentWritten).InLink().With("8017", "8018").Without("7256", "7259"),
        new Row("7254", "given name").Text(40, PercentWritten).InLink().With("8017", "8018").Without("7256", "7259"),
        new Row("7255", "name suffix").Text(10).InLink().With("8017", "8018").Without("7256", "7259"),
        new Row("7256", "full name").Text(90, PercentWritten).InLink().With("8017", "8018"),
        new Row("7257", "address of a person").Text(70, PercentWritten).InLink().With("8018"),
        new Row("7258", "order of birth").Letters(3, PlaceInOrder).InLink().With("8018+7259"),
        new Row("7259", "baby of").Text(40, PercentWritten).InLink().With("8018").Without("7256"),
    ];
}
