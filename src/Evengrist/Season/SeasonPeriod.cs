using NodaTime;

namespace Evengrist.Season;

/// <summary>One step of the plan: a day or a week of the crop year.</summary>
/// <param name="Start">Its first day, at the mill.</param>
/// <param name="Days">Length, days, 1 or more.</param>
public sealed record SeasonPeriod(LocalDate Start, int Days)
{
    /// <summary>The first day after it.</summary>
    public LocalDate End => Start.PlusDays(Days);

    /// <summary>Length in weeks.</summary>
    public double Weeks => Days / 7.0;
}
