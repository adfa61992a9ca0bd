using Evengrist.Milling.Drift;
using Evengrist.Plant.Answers;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Milling;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Flow;

/// <summary>What a unit's tests tell of drift, as lists.</summary>
public static class DriftLists
{
    private const string Page = "/milling/drift";

    /// <summary>What drifted, and every figure against its own band.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "mill-drift", "What drifted of a mill unit by its tests, what costs most first; odds and sizes are told by the model", new ListOf<(MillTestHistory History, DriftFound Found)>()
                .Text("mill unit", r => r.History.Unit).Text("what", r => DriftWords.Cause(r.Found.Cause, r.History.Sheet)).Moment("since about", r => r.Found.Since).Text("how much by now", r => MillDriftAnswer.Amount(r.Found)).Reckoned("likely", ListUnit.Percent, r => 100 * r.Found.Probability)
                .Reckoned("flour at the same ash, of the wheat", ListUnit.Percent, r => r.Found.Cost.FlourPoints.Value).Reckoned("one standard uncertainty of that", ListUnit.Percent, r => r.Found.Cost.FlourPoints.Uncertainty).Reckoned("ash of all flour, points", ListUnit.Percent, r => r.Found.Cost.AshPoints, "dry matter")
                .Text("or else", r => string.Join("; ", r.Found.Rivals.Select(o => $"{DriftWords.Cause(o.Cause, r.History.Sheet)} ({DriftWords.Likely(o.Probability)})"))).Text("to be sure, measure", r => MillDriftAnswer.Next(r.Found)),
            (visit, context) => Of(visit, context, (history, looked) => looked.Found.Select(f => (history, f)))),
        PageList.Answer(Page, "drift-figures", "Every figure of a mill unit that was measured twice or more against its own band, a row for each test", new ListOf<(string Unit, DriftSeries Series, DriftPoint Point)>()
                .Text("mill unit", r => r.Unit).Text("figure", r => r.Series.What).Moment("test", r => r.Point.At).Number("measured", ListOrigin.Seen, ListUnit.Percent, r => (decimal)r.Point.Measured).Reckoned("own, without drift", ListUnit.Percent, r => r.Point.Own).Reckoned("own scatter, one standard deviation", ListUnit.Percent, r => r.Series.OwnSpread)
                .YesNo("outside its band of three", r => r.Point.IsOutside),
            (visit, context) => Of(visit, context, (history, looked) => looked.Series.SelectMany(s => s.Points.Select(p => (history.Unit, s, p))))),
    ];

    /// <summary>The tests of the unit that is asked for, else of the one tested most often; null where no such unit has a flow sheet.</summary>
    public static MillTestHistory? HistoryOf(Visit visit, string? unit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var units = FlowSheets.Newest(visit.Mill);
        var asked = string.IsNullOrWhiteSpace(unit) ? MillTests.Newest(visit.Mill).Where(t => t.Stands).GroupBy(t => t.Paper.Unit).MaxBy(g => g.Count())?.Key ?? (units.Count > 0 ? units[0].Unit : null) : units.FirstOrDefault(u => u.Unit.Equals(unit.Trim(), StringComparison.OrdinalIgnoreCase))?.Unit;
        return asked is null ? null : MillTestHistory.Of(visit.Mill, asked, visit.AsOf);
    }

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<MillTestHistory, DriftLooked, IEnumerable<T>> rows)
    {
        if (HistoryOf(visit, context.Request.Query.Typed("unit")) is not { } history || history.Tests.Select(t => t.At).Distinct().Count() < MillDrift.FewestTests)
        {
            return (null, $"Drift is looked for from {MillDrift.FewestTests} tests of a unit on: keep them under Milling, tests.");
        }

        var work = DriftSeen.Work(context.RequestServices.GetRequiredService<WorkShelf>(), context.RequestServices.GetRequiredService<MillTunings>(), history, again: false);
        return work.Outcome?.Outcome switch
        {
            DriftLooked looked => (rows(history, looked), ""),
            DriftNotLooked not => (null, string.Join(" ", not.Reasons)),
            _ => (null, StillReckoning.Words),
        };
    }
}
