using Evengrist.Laboratory.Charts;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A chart of one property of one place by one method, as of a moment.</summary>
/// <param name="Choices">What can be charted: its code and how many readings there are.</param>
/// <param name="Code">What is shown; empty where there is nothing.</param>
/// <param name="Place">Its place.</param>
/// <param name="Flour">The flour it made, where it is a mill unit; else empty.</param>
/// <param name="What">Its property.</param>
/// <param name="Method">Its method.</param>
/// <param name="All">Every reading by then, in the order of time, on 14 % moisture where it has a basis.</param>
/// <param name="Shown">The newest of them, which are drawn.</param>
/// <param name="Versions">Frozen limits, the newest first; empty where none are.</param>
/// <param name="Chart">The chart by the newest; null without.</param>
public sealed record ChartSight(
    IReadOnlyList<(string Code, int Readings)> Choices, string Code, string Place, string Flour, Property What, string Method, IReadOnlyList<(Instant At, double Value)> All, IReadOnlyList<(Instant At, double Value)> Shown,
    IReadOnlyList<(FrozenLimits Limits, int Version, string By, Instant Kept)> Versions, ChartOutcome? Chart)
{
    /// <summary>Looks.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="chosen">A code of the choices; where empty or unknown, the first that has frozen limits, else the one with most readings.</param>
    /// <param name="at">What was read later is left out.</param>
    public static ChartSight Of(Mill mill, string? chosen, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var series = mill.Ask(view => ChartSeries.Of(view.Book, at));
        if (series.Count == 0)
        {
            return new([], "", "", "", Property.None, "", [], [], [], null);
        }

        var frozen = ChartBooks.Limits(mill);
        var one = series.FirstOrDefault(s => s.Code == chosen) ?? series.FirstOrDefault(s => frozen.Contains(s.Code)) ?? series[0];
        (FrozenLimits Limits, int Version, string By, Instant Kept)[] versions = [.. frozen[one.Code]];
        var shown = one.Newest;
        return new([.. series.Select(s => (s.Code, s.Readings.Count))], one.Code, one.Place, one.Flour, one.What, one.Method, one.Readings, shown, versions, versions.Length > 0 ? versions[0].Limits.Chart(shown.Select(r => r.Value)) : null);
    }

    /// <summary>Its signals, the newest first, in words.</summary>
    public IEnumerable<(Instant At, double Value, string Words)> Signals => Chart is null ? [] : Chart.Points.Where(p => p.Signals).Reverse().Select(p => (Shown[p.Number - 1].At, Shown[p.Number - 1].Value, LabChartWords.Of(p)));
}
