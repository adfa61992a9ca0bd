using Evengrist.Laboratory.Watch;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>An instrument that is watched, pair by pair, as a list.</summary>
public static class WatchLists
{
    private sealed record Row(WatchSight Sight, int Number, Reading Reference, Reading Instrument, WatchdogPair Pair);

    /// <summary>The list.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer("/laboratory/watch", "watch-pairs", "An instrument that is watched: every pair of readings with its difference and the sums", new ListOf<Row>()
                .Text("place", r => r.Sight.Place).Text("property", r => r.Instrument.What.Words()).Whole("pair", r => r.Number).Moment("instrument read", r => r.Instrument.At).Text("instrument", r => r.Instrument.Instrument).Text("reference method", r => r.Reference.Method).Number("reference", ListOrigin.Seen, null, r => (decimal)r.Pair.Reference)
                .Number("instrument's value", ListOrigin.Seen, null, r => (decimal)r.Pair.Instrument).Text("unit", r => r.Instrument.Unit).Text("UN/ECE code of the unit", r => ListUnit.Of(r.Instrument.Unit).Code).Text("basis", r => r.Instrument.Basis.IsStated ? r.Instrument.Basis.ToString() : "")
                .Reckoned("difference", null, r => r.Pair.Difference).Reckoned("sum above", null, r => r.Sight.Outcome!.Sums[r.Number - 1].Above).Reckoned("sum below", null, r => r.Sight.Outcome!.Sums[r.Number - 1].Below).Reckoned("a sum rings above", null, r => r.Sight.Outcome!.Limit),
            (visit, context) =>
            {
                var ask = WatchAsk.Of(context.Request.Query.Typed);
                var sight = WatchSight.Of(visit.Mill, ask, visit.Read(ask.From), visit.AsOf);
                return sight is { Found: { } found, Spec: { } spec, Outcome: not null } ? (found.Pairs.TakeLast(spec.Pairs.Count).Select((p, i) => new Row(sight, i + 1, p.Reference, p.Instrument, spec.Pairs[i])), "")
                    : (null, ask.Fields.Faults.Count > 0 ? string.Join(" ", ask.Fields.Faults) : "No instrument was read beside a reference by then: there is nothing to watch.");
            }),
    ];
}
