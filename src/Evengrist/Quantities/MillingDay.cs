using NodaTime;

namespace Evengrist.Quantities;

/// <summary>The milling day of a moment: the site's calendar date, begun at the site's own hour.</summary>
public static class MillingDay
{
    /// <summary>The date on which the milling day of a moment began.</summary>
    /// <param name="moment">Any moment.</param>
    /// <param name="zone">The site's time zone.</param>
    /// <param name="begins">The hour at which a milling day begins, for example 06:00; before it the moment belongs to the day before.</param>
    public static LocalDate Of(Instant moment, DateTimeZone zone, LocalTime begins)
    {
        ArgumentNullException.ThrowIfNull(zone);
        var local = moment.InZone(zone).LocalDateTime;
        return local.TimeOfDay >= begins ? local.Date : local.Date.PlusDays(-1);
    }

    /// <summary>The moment at which the milling day of a date begins; an hour the clock skips or has twice is read leniently.</summary>
    /// <param name="day">The date.</param>
    /// <param name="zone">The site's time zone.</param>
    /// <param name="begins">The hour at which a milling day begins.</param>
    public static Instant Begin(LocalDate day, DateTimeZone zone, LocalTime begins)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return zone.AtLeniently(day + begins).ToInstant();
    }
}
