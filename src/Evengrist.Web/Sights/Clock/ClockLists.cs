using Evengrist.Milling.Clock;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Clock;

/// <summary>The arrival clock as lists: when what was changed arrives where, and the changes at the gates.</summary>
public static class ClockLists
{
    private const string Page = "/milling/clock";

    /// <summary>Both.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "arrivals", "When what was changed at the gates arrives at each place, a row for each share of new", new ListOf<(ClockSight Sight, WayOfUnit Way, StageArrival Place, Arrival Arrival, double Now)>()
                .Text("mill unit", r => r.Way.Unit.Code).Moment("gates changed", r => r.Sight.Changed).Text("at", r => r.Place.Name).Reckoned("new now", ListUnit.Percent, r => 100 * r.Place.Curve.At(r.Now)).Number("share that is new", ListOrigin.Stated, ListUnit.Percent, r => 100 * (decimal)r.Arrival.Share).Moment("arrives, reckoned", r => r.Way.Running.When(r.Arrival.Hours))
                .Reckoned("after hours of running", ListUnit.Hour, r => r.Arrival.Hours).Reckoned("one standard uncertainty", ListUnit.Hour, r => r.Arrival.StandardUncertainty),
            (visit, context) => Look(visit, context) is var sight && sight.Way is { } way ? (sight.Places.SelectMany(p => p.Arrivals.Select(a => (sight, way, p, a, way.Running.At(visit.AsOf)))), "") : (null, Why(sight))),
        PageList.Answer(Page, "gate-changes", "Changes of the mix at the gates over the last fourteen days, by the ledger", new ListOf<MixChange>()
                .Moment("at", c => c.At).Reckoned("other wheat", ListUnit.Percent, c => c.Points, "of the mix").Text("before", c => Say(c.Before)).Text("after", c => Say(c.After)),
            (visit, context) => (Look(visit, context).Changes, "")),
    ];

    private static ClockSight Look(Visit visit, HttpContext context) => ClockSight.Of(visit.Mill, context.Request.Query.Typed, visit.Read, visit.AsOf);

    private static string Why(ClockSight sight) => sight.Ask.Fields.Faults.Count > 0 ? string.Join(" ", sight.Ask.Fields.Faults) : sight.Why.Length > 0 ? sight.Why : "No change of the mix in the last fourteen days: say when the gates were changed, add &at=";

    private static string Say(IReadOnlyList<(string Bin, double Percent)> shares) => string.Join("; ", shares.Select(s => FormattableString.Invariant($"{s.Bin} {s.Percent:0.##} %")));
}
