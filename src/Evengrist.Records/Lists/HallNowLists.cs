using Evengrist.Ledger;
using Evengrist.Packing.Boards;
using Evengrist.Packing.Dispatch;
using Evengrist.Packing.NetContent;
using Evengrist.Packing.Orders;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;

namespace Evengrist.Records.Lists;

/// <summary>The packing hall as it stands: orders against the ledger, bins that feed the lines, empty packages weighed, and what tankers were made of.</summary>
internal static class HallNowLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("order-standings", "How far each order is by the ledger; a pallet names no order, so that this is reckoned by rule", new ListOf<(OrderStanding Standing, PlannedRun? Run)>()
                .Text("order", r => r.Standing.Order.Number).Text("customer", r => r.Standing.Order.Customer).Text("product", r => r.Standing.Order.Product).Moment("due", r => r.Standing.Order.Due).Whole("priority", r => r.Standing.Order.Priority).Mass("wanted net", ListOrigin.Reckoned, r => r.Standing.Wanted).Mass("gone", ListOrigin.Reckoned, r => r.Standing.Shipped)
                .Mass("stands here", ListOrigin.Reckoned, r => r.Standing.Standing).Mass("still to pack", ListOrigin.Reckoned, r => r.Standing.Remaining).Text("state", r => r.Standing.State.ToString()).YesNo("label approved", r => r.Standing.Product?.Label is not null).Text("planned on", r => r.Run?.Line).Moment("until, planned", r => r.Run?.Until).Whole("late", r => r.Run?.LateMinutes, ListUnit.Minute, ListOrigin.Reckoned),
            (mill, ask) => PackingPlans.InForce(mill, ask.AsOf)?.Plan.Runs.ToLookup(r => r.Order) is var runs ? HallRecords.Standings(mill, ask.AsOf).Where(s => ask.Names(s.Order.Number) || ask.Names(s.Order.Customer) || ask.Names(s.Order.Product)).Select(s => (s, runs?[s.Order.Number].FirstOrDefault())) : []),
        MillList.Of("packing-bins", $"Flour bins that feed the packing lines; flows are the mean of the last {HallRecords.FlowHours} hours", new ListOf<FlourBinNow>()
                .Text("bin", b => b.Place.Code).Text("flour", b => b.Place.Material).Mass("lies there", ListOrigin.Reckoned, b => b.Level).Mass("may hold", ListOrigin.Stated, b => b.Place.Capacity).Reckoned("flows in", ListUnit.TonnesPerHour, b => b.InTonnesPerHour).Reckoned("flows out", ListUnit.TonnesPerHour, b => b.OutTonnesPerHour)
                .Reckoned("one standard uncertainty of in less out", ListUnit.TonnesPerHour, b => b.NetUncertainty).Reckoned("empty in, if that goes on", ListUnit.Minute, b => b.MinutesToEmpty).Reckoned("full in, if that goes on", ListUnit.Minute, b => b.MinutesToFull).Reckoned("one standard uncertainty of those", ListUnit.Minute, b => b.MinutesUncertainty).Whole("layers, first in, first out", b => b.Layers.Count, null, ListOrigin.Reckoned),
            (mill, ask) => HallRecords.Bins(mill, ask.AsOf).Where(b => ask.Names(b.Place.Code))),
        MillList.Of("load-orders", "Orders that loads name beside what loads carry of them; a pallet names no order, so that this is reckoned by rule", new ListOf<(DispatchLoad Load, OrderOnLoads Order)>()
                .Text("load", r => r.Load.Number).Day("day", r => r.Load.Day).Text("consignee", r => r.Load.Consignee).Text("order", r => r.Order.Named.Number).YesNo("order is kept here", r => r.Order.Named.Order is not null).Text("product", r => r.Order.Named.Order?.Product).Moment("due", r => r.Order.Named.Order?.Due)
                .Mass("ordered net", ListOrigin.Stated, r => r.Order.Ordered).Mass("sent before", ListOrigin.Reckoned, r => r.Order.Sent).Mass("on this load", ListOrigin.Reckoned, r => r.Order.Here).Mass("on other open loads", ListOrigin.Reckoned, r => r.Order.Elsewhere).Mass("still open", ListOrigin.Reckoned, r => r.Order.StillOpen).Mass("over", ListOrigin.Reckoned, r => r.Order.Over),
            (mill, ask) => RampPapers.Of(mill) is var papers ? DispatchShelf.All(mill).Where(l => l.Orders.Count > 0 && (ask.Names(l.Number) || ask.Names(l.Consignee))).SelectMany(l => SeenLoad.Of(mill, papers, l, ask.AsOf).Filled.Orders.Select(o => (l, o))) : []),
        MillList.Of("tare-samples", "Empty packages weighed by hand, a row for each weighing", new ListOf<(TareSample Sample, string By)>()
                .Text("product", r => r.Sample.Product).Moment("weighed", r => r.Sample.At).Text("delivery", r => r.Sample.Delivery).Whole("packages", r => r.Sample.Grams.Count, ListUnit.Piece, ListOrigin.Seen).Reckoned("mean", ListUnit.Gram, r => r.Sample.Mean).Reckoned("± 95 % of the mean", ListUnit.Gram, r => r.Sample.PlusMinus).Reckoned("standard deviation", ListUnit.Gram, r => r.Sample.Deviation)
                .Text("each, g", r => string.Join(" ", r.Sample.Grams.Select(g => FormattableString.Invariant($"{g:0.###}")))).Text("weighed by", r => r.By),
            (mill, ask) => TareSamples.Of(mill, ask["product"] is { Length: > 0 } product ? product : null, ask.AsOf).Where(t => ask.Spans(t.Sample.At) && ask.Names(t.Sample.Product))),
        MillList.Of("tanker-layers", "What tankers were made of, under each way a flour bin may empty; reckoned, not seen", new ListOf<(DispatchLoad Load, string Package, TankerLayers Of, TankerLayer Layer)>()
                .Text("load", r => r.Load.Number).Text("loose load", r => r.Package).Text("outflow", r => r.Of.Outflow.Words()).Text("from", r => r.Layer.From.Code).Text("kind of place", r => r.Layer.From.Kind.Words()).Moment("milled from", r => r.Layer.Since).Reckoned("share of the load", ListUnit.Percent, r => 100 * r.Layer.Share, "by mass"),
            (mill, ask) => (ask.Of.Length > 0 ? DispatchShelf.Find(mill, ask.Of) is { } one ? [one] : [] : DispatchShelf.All(mill).Where(l => l.IsTanker && ask.Spans(l.Day.AtMidnight().InZoneLeniently(ask.Zone).ToInstant())))
                .SelectMany(l => LayersOfLoads.Of(mill, l, ask.AsOf).SelectMany(p => p.Each.SelectMany(e => e.Layers.Select(y => (l, p.Package, e, y)))))),
    ];
}
