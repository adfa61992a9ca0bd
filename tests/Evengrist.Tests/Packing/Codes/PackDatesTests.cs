using Evengrist.Packing.Codes;
using NodaTime;

namespace Evengrist.Tests.Packing.Codes;

/// <summary>ISO 8601 ordinal dates, and months with the end of the month kept [common practice; by calendar].</summary>
public sealed class PackDatesTests
{
    [Theory]
    [InlineData(2024, 12, 31, "24366")]
    [InlineData(2024, 3, 1, "24061")]
    [InlineData(2025, 3, 1, "25060")]
    [InlineData(2026, 9, 14, "26257")]
    public void DayNumber_OfADay_IsYearAndDayOfTheYear(int year, int month, int day, string number) => Assert.Equal(number, PackDates.DayNumber(new LocalDate(year, month, day)));

    [Theory]
    [InlineData("2024-02-29", 12, "2025-02-28")]
    [InlineData("2025-08-31", 6, "2026-02-28")]
    [InlineData("2025-11-30", 3, "2026-02-28")]
    [InlineData("2025-10-07", 12, "2026-10-07")]
    public void BestBefore_MonthsOn_EndsWithTheMonth(string made, int months, string expected)
    {
        var day = NodaTime.Text.LocalDatePattern.Iso.Parse(made).Value;
        Assert.Equal(expected, NodaTime.Text.LocalDatePattern.Iso.Format(PackDates.BestBefore(day, months)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(61)]
    public void BestBefore_NoTimeOrTooLong_IsRefused(int months) => Assert.Throws<ArgumentOutOfRangeException>(() => PackDates.BestBefore(new LocalDate(2026, 1, 1), months));
}
