using System.Globalization;
using NodaTime;

namespace Evengrist.Packing.Codes;

/// <summary>Dates on packs, from the milling day.</summary>
public static class PackDates
{
    /// <summary>Longest a flour is said to keep, months [ours].</summary>
    public const int MostMonths = 60;

    /// <summary>Best before: so many months on, and the last day of the month where the month has no such day.</summary>
    /// <param name="made">Milling day.</param>
    /// <param name="months">How long the flour keeps, 1 to <see cref="MostMonths"/>; white flour often 12, whole wheat 3 to 9 [common practice].</param>
    public static LocalDate BestBefore(LocalDate made, int months) => months is >= 1 and <= MostMonths ? made.PlusMonths(months)
        : throw new ArgumentOutOfRangeException(nameof(months), months, $"Flour is said to keep 1 to {MostMonths} months.");

    /// <summary>Year and day of the year, as <c>26257</c> for 14 September 2026. Two digits of a year come again: the full date stands beside it.</summary>
    /// <param name="date">Milling day.</param>
    public static string DayNumber(LocalDate date) => string.Create(CultureInfo.InvariantCulture, $"{date.Year % 100:00}{date.DayOfYear:000}");
}
