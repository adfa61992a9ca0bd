using NodaTime;
using NodaTime.Text;
using NodaTime.TimeZones;

namespace Evengrist.Plant.Imports;

/// <summary>Moments as people and machines write them: ISO 8601, with an offset, or local in a zone.</summary>
public static class Moments
{
    private static readonly OffsetDateTimePattern[] WithOffset = new[] { "uuuu-MM-dd'T'HH:mm:ss;FFFFFFo<Z+HH:mm>", "uuuu-MM-dd'T'HH:mmo<Z+HH:mm>", "uuuu-MM-dd'T'HH:mmo<+HH>" }
        .Select(OffsetDateTimePattern.CreateWithInvariantCulture).ToArray();

    private static readonly LocalDateTimePattern[] Local = new[] { "uuuu-MM-dd'T'HH:mm:ss;FFFFFF", "uuuu-MM-dd'T'HH:mm" }
        .Select(LocalDateTimePattern.CreateWithInvariantCulture).ToArray();

    /// <summary>The moment, or what was expected instead.</summary>
    public static (Instant? At, string Expected) Of(string text, DateTimeZone? zone)
    {
        var joined = text.Length > 10 && text[10] == ' ' ? string.Concat(text.AsSpan(0, 10), "T", text.AsSpan(11).TrimStart()) : text;
        foreach (var pattern in WithOffset)
        {
            if (pattern.Parse(joined) is { Success: true } parsed)
            {
                return (parsed.Value.ToInstant(), "");
            }
        }

        if (zone is null)
        {
            return (null, "a date and time with its offset, such as 2025-07-09T14:05-06:00, or a zone for local times (declared, chosen, or in the heading)");
        }

        foreach (var pattern in Local)
        {
            if (pattern.Parse(joined) is { Success: true } parsed)
            {
                return InZone(parsed.Value, zone);
            }
        }

        return (null, "a date and time such as 2025-07-09 14:05, year first");
    }

    private static (Instant? At, string Expected) InZone(LocalDateTime local, DateTimeZone zone)
    {
        var map = zone.MapLocal(local);
        return map.Count switch
        {
            1 => (map.Single().ToInstant(), ""),
            0 => (null, $"a time that exists in {zone.Id}; the clocks went forward over this one"),
            _ => (null, $"an offset as well, since the clocks of {zone.Id} showed this time twice: {Both(map)}"),
        };
    }

    private static string Both(ZoneLocalMapping map) =>
        string.Join(" or ", new[] { map.First(), map.Last() }.Select(z => WithOffset[1].Format(z.ToOffsetDateTime())));
}
