using System.Globalization;
using Evengrist.Ledger;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Records;

/// <summary>What a mill says about itself once.</summary>
public sealed record MillSettings
{
    /// <summary>What the mill is called.</summary>
    public string Name { get; init; } = "";

    /// <summary>Time zone of the site, as in the tz database; times on screen are in it.</summary>
    public string ZoneId { get; init; } = "UTC";

    /// <summary>Wall-clock time at which a milling day begins.</summary>
    public LocalTime DayStart { get; init; } = new(6, 0);

    /// <summary>Currency of settlements, three letters.</summary>
    public string Currency { get; init; } = "USD";

    /// <summary>Whether these are the invented facts of the demonstration mill.</summary>
    public bool IsDemonstration { get; init; }

    /// <summary>The moment as of which the pages open; null for now.</summary>
    public Instant? OpensAt { get; init; }

    /// <summary>The moment looked at where nobody says one: the opening moment of a demonstration, else another.</summary>
    /// <param name="otherwise">The moment for a mill of its own.</param>
    public Instant OpeningOr(Instant otherwise) => IsDemonstration && OpensAt is { } opening ? opening : otherwise;

    /// <summary>The zone.</summary>
    public DateTimeZone Zone => DateTimeZoneProviders.Tzdb[ZoneId];

    internal static MillSettings From(IReadOnlyDictionary<string, string> kept)
    {
        var defaults = new MillSettings();
        return new MillSettings
        {
            Name = kept.GetValueOrDefault("name", defaults.Name),
            ZoneId = kept.GetValueOrDefault("zone", defaults.ZoneId),
            DayStart = kept.TryGetValue("day_start", out var start) ? LocalTimePattern.ExtendedIso.Parse(start).Value : defaults.DayStart,
            Currency = kept.GetValueOrDefault("currency", defaults.Currency),
            IsDemonstration = kept.GetValueOrDefault("demonstration") == "yes",
            OpensAt = kept.GetValueOrDefault("opens_at_us") is { Length: > 0 } at ? Micros.ToInstant(long.Parse(at, CultureInfo.InvariantCulture)) : null,
        };
    }

    internal IReadOnlyDictionary<string, string> ToPairs()
    {
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(ZoneId) is null)
        {
            throw new ArgumentException($"\"{ZoneId}\" is no time zone of the tz database. Write it like America/Chicago or Europe/Berlin.");
        }

        if (Currency.Length != 3 || !Currency.All(char.IsAsciiLetterUpper))
        {
            throw new ArgumentException($"\"{Currency}\" is no currency: give the three capital letters, like USD.");
        }

        return new Dictionary<string, string>
        {
            ["name"] = Name,
            ["zone"] = ZoneId,
            ["day_start"] = LocalTimePattern.ExtendedIso.Format(DayStart),
            ["currency"] = Currency,
            ["demonstration"] = IsDemonstration ? "yes" : "no",
            ["opens_at_us"] = OpensAt?.ToMicros().ToString(CultureInfo.InvariantCulture) ?? "",
        };
    }
}
