using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>The milling days of a season: a crop year from 1 July to 30 June, by design; a statement may be asked for any other span.</summary>
/// <param name="From">First milling day.</param>
/// <param name="Until">Last milling day.</param>
public sealed record SeasonSpan(LocalDate From, LocalDate Until)
{
    /// <summary>The crop year that a day lies in.</summary>
    public static SeasonSpan Around(LocalDate day)
    {
        var year = day.Month >= 7 ? day.Year : day.Year - 1;
        return new(new LocalDate(year, 7, 1), new LocalDate(year + 1, 6, 30));
    }

    /// <summary>Whether a milling day lies in it.</summary>
    public bool Holds(LocalDate day) => day >= From && day <= Until;

    /// <summary><c>2025-07-01 to 2026-06-30</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"{From:R} to {Until:R}");
}
