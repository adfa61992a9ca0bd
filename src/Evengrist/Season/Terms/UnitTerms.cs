using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>When a mill unit runs and how fast.</summary>
/// <param name="Code">Its code.</param>
/// <param name="TonnesPerHour">Wheat ground in an hour, t as it lies, above 0.</param>
/// <param name="HoursPerDay">Hours it runs on a milling day, 0 to 24.</param>
public sealed record UnitTerms(string Code, double TonnesPerHour, double HoursPerDay)
{
    /// <summary>Days of the week on which it stands.</summary>
    public IReadOnlyList<IsoDayOfWeek> DaysOff { get; init; } = [];

    /// <summary>Single days on which it stands.</summary>
    public IReadOnlyList<LocalDate> Closed { get; init; } = [];

    /// <summary>A flour that is milled in a period is milled for at least this long, h; null for no such rule.</summary>
    public double? LeastCampaignHours { get; init; }

    /// <summary>Whether it runs on a day.</summary>
    public bool Runs(LocalDate day) => !DaysOff.Contains(day.DayOfWeek) && !Closed.Contains(day);

    /// <summary>Hours it can run in a period.</summary>
    public double HoursIn(SeasonPeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        return HoursPerDay * Enumerable.Range(0, period.Days).Count(d => Runs(period.Start.PlusDays(d)));
    }
}
