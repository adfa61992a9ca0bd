using NodaTime;

namespace Evengrist.Season;

/// <summary>The steps in which a plan looks at the crop year.</summary>
public static class SeasonCalendar
{
    /// <summary>Days at first, then weeks, up to the end of the crop year; the last step is as short as what is left.</summary>
    /// <param name="start">The first day planned.</param>
    /// <param name="end">The last day of the crop year, itself planned.</param>
    /// <param name="days">How many single days come first; two weeks by default.</param>
    /// <exception cref="ArgumentException">The end lies before the start, or the number of days is negative.</exception>
    public static IReadOnlyList<SeasonPeriod> DaysThenWeeks(LocalDate start, LocalDate end, int days = 14)
    {
        if (end < start || days < 0)
        {
            throw new ArgumentException($"A season cannot run from {start:uuuu-MM-dd} to {end:uuuu-MM-dd} with {days} single days.", nameof(end));
        }

        var periods = new List<SeasonPeriod>();
        for (var day = start; day <= end;)
        {
            var left = Period.DaysBetween(day, end) + 1;
            var step = new SeasonPeriod(day, Math.Min(left, periods.Count < days ? 1 : 7));
            periods.Add(step);
            day = step.End;
        }

        return periods;
    }
}
