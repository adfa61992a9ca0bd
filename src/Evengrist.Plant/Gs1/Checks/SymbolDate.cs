using System.Globalization;
using NodaTime;

namespace Evengrist.Plant.Gs1.Checks;

/// <summary>Dates of six digits as symbols carry them.</summary>
/// <remarks>The century is the one in which the year is less than 51 years ahead and at most 49 behind this year: yy − this year's ≥ 51 the one before, ≤ −50 the next. Day 00 is the last of the month. Source: GS1 General Specifications, from memory; rule of GS1's reference test.</remarks>
public static class SymbolDate
{
    /// <summary>The date of six digits; null where there is none such.</summary>
    /// <param name="digits">YYMMDD; DD may be 00 for the last of the month.</param>
    /// <param name="year">This year.</param>
    public static LocalDate? Read(string digits, int year)
    {
        if (!Shaped(digits, 6))
        {
            return null;
        }

        var full = YearOf(Two(digits, 0), year);
        var (month, day) = (Two(digits, 2), Two(digits, 4));
        return month is < 1 or > 12 || full is < 1 or > 9999 || day > CalendarSystem.Iso.GetDaysInMonth(full, month) ? null
            : new LocalDate(full, month, day == 0 ? CalendarSystem.Iso.GetDaysInMonth(full, month) : day);
    }

    /// <summary>Six digits for a date.</summary>
    public static string Write(LocalDate date) => string.Create(CultureInfo.InvariantCulture, $"{date.YearOfEra % 100:00}{date.Month:00}{date.Day:00}");

    internal static string? Expected(string digits, int year, bool monthAlone) =>
        Read(digits, year) is null || (!monthAlone && digits.EndsWith("00", StringComparison.Ordinal)) ? $"a date as year, month, day of two digits each, such as 250315{(monthAlone ? "; the day may be 00" : "")}" : null;

    internal static string? ExpectedFull(string digits) =>
        Shaped(digits, 8) && Two(digits, 4) is >= 1 and <= 12 && (Two(digits, 0) * 100) + Two(digits, 2) is var full && full >= 1 && Two(digits, 6) is >= 1 and var day && day <= CalendarSystem.Iso.GetDaysInMonth(full, Two(digits, 4))
            ? null : "a date as year of four digits, month and day, such as 20250315";

    private static bool Shaped(string digits, int length) => digits.Length == length && digits.All(char.IsAsciiDigit);

    private static int YearOf(int two, int year)
    {
        var century = year - (year % 100);
        var ahead = two - (year % 100);
        return century + two + (ahead >= 51 ? -100 : ahead <= -50 ? 100 : 0);
    }

    private static int Two(string digits, int at) => ((digits[at] - '0') * 10) + digits[at + 1] - '0';
}
