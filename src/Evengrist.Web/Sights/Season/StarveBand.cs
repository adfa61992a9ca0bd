using Evengrist.Season.Futures;
using NodaTime;

namespace Evengrist.Web.Sights.Season;

/// <summary>When a flour goes off target over the futures of a promise: the first day of the period in which it does.</summary>
/// <param name="Early">In one future of twenty it does so sooner; null where it lasts.</param>
/// <param name="Middle">In one of two.</param>
/// <param name="Late">In nineteen of twenty.</param>
public sealed record StarveBand(LocalDate? Early, LocalDate? Middle, LocalDate? Late)
{
    /// <summary>The bands of a promise, by code of the flour.</summary>
    public static IReadOnlyDictionary<string, StarveBand> Of(SeasonPromise promise)
    {
        ArgumentNullException.ThrowIfNull(promise);
        return promise.Flours.ToDictionary(f => f.Flour, f => Of(promise, f));
    }

    /// <summary>The band of one flour.</summary>
    public static StarveBand Of(SeasonPromise promise, FlourPromise flour)
    {
        ArgumentNullException.ThrowIfNull(promise);
        ArgumentNullException.ThrowIfNull(flour);
        LocalDate? Day(int? period) => period is { } t ? promise.Spec.Plan.Spec.Periods[t].Start : null;
        return new StarveBand(Day(flour.Early), Day(flour.Middle), Day(flour.Late));
    }

    /// <summary>The band in words.</summary>
    public string Words => $"{Say(Early)} · {Say(Middle)} · {Say(Late)}";

    /// <summary>A day of it in words.</summary>
    public static string Say(LocalDate? day) => day?.ToString("d MMM uuuu", System.Globalization.CultureInfo.InvariantCulture) ?? "lasts";
}
