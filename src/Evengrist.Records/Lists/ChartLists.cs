using Evengrist.Laboratory.Charts;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Records.Lists;

/// <summary>Points of control charts with their limits, and the frozen limits themselves.</summary>
internal static class ChartLists
{
    private sealed record Row(ChartSeries Series, FrozenLimits Limits, int Version, ChartOutcome Chart, ChartPoint Point, Instant At, string Done);

    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("chart-points", "Points of control charts as they are drawn, by limits that were frozen", new ListOf<Row>()
                .Text("chart", r => r.Series.Code).Text("place", r => r.Series.Place).Text("flour", r => r.Series.Flour).Text("property", r => r.Series.What.Words()).Text("method", r => r.Series.Method).Text("basis", r => BasisOf(r.Series.What)).Whole("point", r => r.Point.Number).Moment("taken", r => r.At)
                .Reckoned("value", ListUnit.Percent, r => r.Point.Value).Reckoned("lower control limit", ListUnit.Percent, r => r.Chart.Limits.Lower).Reckoned("centre", ListUnit.Percent, r => r.Chart.Limits.Centre).Reckoned("upper control limit", ListUnit.Percent, r => r.Chart.Limits.Upper).Number("target", ListOrigin.Stated, ListUnit.Percent, r => (decimal?)r.Limits.Target)
                .Reckoned("moving range", ListUnit.Percent, r => r.Point.Spread).Reckoned("upper limit of the moving range", ListUnit.Percent, r => r.Chart.Spreads.Upper).Reckoned("moving mean", ListUnit.Percent, r => r.Point.Moving?.Mean).YesNo("moving mean beyond", r => r.Point.Moving?.IsBeyond)
                .Reckoned("cumulative sum above, in standard deviations", null, r => r.Point.Sums?.Above).Reckoned("cumulative sum below, in standard deviations", null, r => r.Point.Sums?.Below).YesNo("cumulative sum beyond", r => r.Point.Sums?.IsBeyond)
                .YesNo("signals", r => r.Point.Signals).Text("rules that fire", r => string.Join("; ", r.Point.Rules)).Text("what was done", r => r.Done).Whole("version of the limits", r => r.Version),
            (mill, ask) => Points(mill, ask)),
        MillList.Of("chart-limits", "Limits of control charts, every version", new ListOf<(FrozenLimits Limits, int Version, string By, Instant Kept)>()
                .Text("chart", r => r.Limits.Code).Whole("version", r => r.Version).Text("place", r => r.Limits.Place).Text("flour", r => r.Limits.Flour).Text("property", r => r.Limits.What.Words()).Text("method", r => r.Limits.Method).Text("basis", r => BasisOf(r.Limits.What)).Moment("period from", r => r.Limits.From).Moment("period until", r => r.Limits.Until)
                .Whole("readings of the period", r => r.Limits.Count, null, ListOrigin.Seen).Reckoned("centre", ListUnit.Percent, r => r.Limits.Centre).Reckoned("one standard deviation", ListUnit.Percent, r => r.Limits.Sigma).Text("found by", r => r.Limits.Estimate.ToString()).Number("target", ListOrigin.Stated, ListUnit.Percent, r => (decimal?)r.Limits.Target)
                .Number("lower limit of the flour", ListOrigin.Stated, ListUnit.Percent, r => (decimal?)r.Limits.Lower).Number("upper limit of the flour", ListOrigin.Stated, ListUnit.Percent, r => (decimal?)r.Limits.Upper).Text("rules", r => string.Join("; ", r.Limits.Rules)).Text("reason", r => r.Limits.Reason).Text("kept by", r => r.By).Moment("kept", r => r.Kept),
            (mill, ask) => ChartBooks.Limits(mill).Where(g => Asked(ask, g.Key)).OrderBy(g => g.Key, StringComparer.Ordinal).SelectMany(g => g)),
    ];

    private static IEnumerable<Row> Points(Mill mill, ListAsk ask)
    {
        var frozen = ChartBooks.Limits(mill);
        foreach (var series in mill.Ask(view => ChartSeries.Of(view.Book, ask.AsOf)).Where(s => frozen.Contains(s.Code) && Asked(ask, s.Code)).OrderBy(s => s.Code, StringComparer.Ordinal))
        {
            var (limits, version, _, _) = frozen[series.Code].First();
            var (shown, done) = (series.Newest, ChartBooks.Actions(mill, series.Code).ToLookup(a => a.Action.Point, a => a.Action.Done));
            if (limits.Chart(shown.Select(r => r.Value)) is not { } chart)
            {
                continue;
            }

            foreach (var point in chart.Points.Where(p => ask.Holds(shown[p.Number - 1].At)))
            {
                yield return new Row(series, limits, version, chart, point, shown[point.Number - 1].At, string.Join("; ", done[shown[point.Number - 1].At]));
            }
        }
    }

    // A page says which chart; a place or unit may be named too.
    private static bool Asked(ListAsk ask, string chart) => ask["chart"] is { Length: > 0 } one ? one.Equals(chart, StringComparison.OrdinalIgnoreCase) : ask.Of.Length == 0 || ask.Names(chart) || chart.StartsWith(ask.Of + " ", StringComparison.OrdinalIgnoreCase);

    private static string BasisOf(Property what) => what.NeedsBasis() ? Basis.At14.ToString() : "as it is";
}
