using NodaTime;

namespace Evengrist.Demo;

/// <summary>The days of the demonstration's crop year and which flour each unit mills when. The milling day begins at 06:00.</summary>
public static class MillCalendar
{
    /// <summary>The demonstration mill's time zone: six hours behind UTC all the year round, so that every milling day has 24 hours.</summary>
    public const string ZoneId = "Etc/GMT+6";

    /// <summary>First milling day.</summary>
    public static LocalDate FirstDay { get; } = new(2025, 7, 1);

    /// <summary>Last milling day; it ends at 06:00 on the day after.</summary>
    public static LocalDate LastDay { get; } = new(2026, 6, 30);

    /// <summary>The day on which the stock per bin stands as planned, at 06:00, and bin B14 is first drawn.</summary>
    public static LocalDate PlanDay { get; } = new(2025, 9, 15);

    /// <summary>The moment at which the demonstration opens: the morning on which supplier F02 reports the trailer of treated seed.</summary>
    public static Instant OpeningMoment { get; } = At(new LocalDate(2026, 1, 14), 10, 40);

    internal static Instant Begin { get; } = At(FirstDay, 6);

    /// <summary>A moment in mill time.</summary>
    public static Instant At(LocalDate day, int hour, int minute = 0, int second = 0) =>
        Instant.FromUtc(day.Year, day.Month, day.Day, 0, 0) + Duration.FromSeconds(((hour + 6) * 3600L) + (minute * 60L) + second);

    /// <summary>The mill's wall clock at a moment.</summary>
    internal static LocalDateTime Wall(Instant at) => (at - Duration.FromHours(6)).InUtc().LocalDateTime;

    /// <summary>Six days a week; shut on Sundays and on Christmas Day: 312 days.</summary>
    internal static bool Runs(LocalDate day) => day.DayOfWeek != IsoDayOfWeek.Sunday && day is not { Month: 12, Day: 25 } && day <= LastDay;

    /// <summary>The week of the stream survey: Unit A is held at exactly 17.5 t/h of wheat, on white bread.</summary>
    internal static bool SurveyWeek(LocalDate day) => day >= PlanDay && day < PlanDay.PlusDays(6);

    /// <summary>The flour a unit mills on a day.</summary>
    internal static Flour Campaign(char unit, LocalDate day) => unit == 'A' ? OfUnitA(day) : OfUnitB(day);

    /// <summary>A moment in running time: shut days are stepped over.</summary>
    internal static Instant RunningAfter(Instant at, int hours)
    {
        var then = at + Duration.FromHours(hours);
        for (var day = MillingDay(at).PlusDays(1); day <= MillingDay(then); day = day.PlusDays(1))
        {
            then += Runs(day) || day > LastDay ? Duration.Zero : Duration.FromHours(24);
        }

        return then;
    }

    internal static LocalDate MillingDay(Instant at) => Wall(at - Duration.FromHours(6)).Date;

    private static Flour OfUnitA(LocalDate day)
    {
        var weekday = (int)day.DayOfWeek;
        var white = SurveyWeek(day) ? 6
            : day > PlanDay && day < PlanDay.PlusDays(20) ? 3 // the two weeks after catch up on all-purpose
            : 4;
        return weekday <= white ? Flour.WB : Flour.AP;
    }

    // Until the new spring wheat comes there is little to make high gluten of: one day a week, pastry on four.
    private static Flour OfUnitB(LocalDate day)
    {
        var weekday = (int)day.DayOfWeek;
        if (day < new LocalDate(2025, 8, 20))
        {
            return weekday == 1 ? Flour.HG : (weekday == 6 && day.Day != 16) ? Flour.WW : Flour.PA;
        }

        return weekday <= 3 ? Flour.HG : weekday <= 5 ? Flour.PA : Flour.WW;
    }
}
