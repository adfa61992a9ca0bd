using Evengrist.Laboratory.Charts;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person freezes the limits of a chart from a stated period. Earlier versions stay.</summary>
/// <param name="Chart">Code of the chart, as <c>UA WB Protein NIR</c>.</param>
/// <param name="Period">From when until when; its readings are taken.</param>
/// <param name="Wanted">Target and limits of the flour; null for none.</param>
/// <param name="Rules">The rules that are looked for.</param>
/// <param name="Reason">Why now.</param>
public sealed record FreezeLimits(string Chart, (Instant From, Instant Until) Period, (double? Target, double? Lower, double? Upper) Wanted, IReadOnlyList<RunRule> Rules, string Reason)
{
    /// <summary>Freezes them as the chart's next version; every fault where they cannot be, and then nothing is kept. The newest once more changes nothing.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who.</param>
    /// <param name="now">The present moment: no period ends after it.</param>
    public IReadOnlyList<string> In(Mill mill, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (mill.Ask(view => ChartSeries.Find(view.Book, Chart, now)) is not { } series)
        {
            return [$"Nothing can be charted as \"{Chart.Trim()}\". Look for a typing error; a chart needs {FrozenLimits.Fewest} readings of protein, moisture or ash of one place by one method, and of a unit by one flour."];
        }

        var limits = series.Frozen(Period, Wanted, Rules, Reason.Trim());
        string[] faults =
        [
            .. limits.Faults(),
            .. Period.Until > now ? [$"The period ends in the future, {Period.Until}: end it by now."] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(by) ? ["Say who freezes them."] : Array.Empty<string>(),
        ];
        if (faults.Length == 0)
        {
            mill.Papers(FrozenLimits.PaperKind).KeepNext(limits.Code, limits.ToJson(), by);
        }

        return faults;
    }
}
