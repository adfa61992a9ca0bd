using Evengrist.Packing.Boards;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Runs;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Packing;

namespace Evengrist.Records.Lists;

/// <summary>The packing hall: runs of the plan, lines, what lies between products, what the mill means to make, packaging, clean-downs, scans.</summary>
internal static class HallLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("packing-runs", "Runs of the packing plan in force", new ListOf<(KeptPackingPlan Kept, PlannedRun Run)>()
                .Whole("version of the plan", r => r.Kept.Version).Text("line", r => r.Run.Line).Text("order", r => r.Run.Order).Text("product", r => r.Run.Product).Moment("from, planned", r => r.Run.From).Moment("until, planned", r => r.Run.Until).Mass("net to be packed", ListOrigin.Reckoned, r => Mass.FromGrams(r.Run.Grams)).Text("fed from", r => r.Run.Bin)
                .Moment("due", r => r.Run.Due).Whole("late", r => r.Run.LateMinutes, ListUnit.Minute, ListOrigin.Reckoned).Whole("changing over before it", r => r.Run.ChangeMinutes, ListUnit.Minute, ListOrigin.Reckoned).Reckoned("flour run through before it", ListUnit.Tonne, r => r.Run.FlushTonnes).Text("that flour goes to", r => r.Run.FlushTo)
                .Text("to be signed clean of", r => string.Join(", ", r.Run.ToSign)).YesNo("stays where it is", r => r.Run.IsLocked).Text("why the plan was kept", r => r.Kept.Plan.Why).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => PackingPlans.InForce(mill, ask.AsOf) is { } kept ? kept.Plan.Runs.Where(r => ask.Names(r.Order) || ask.Names(r.Line) || ask.Names(r.Product)).Select(r => (kept, r)) : []),
        MillList.Of("packing-lines", "Packing lines, a row for each product a line makes", new ListOf<(LineTerms Line, LineRate? Rate)>()
                .Text("line", r => r.Line.Code).Whole("crew", r => r.Line.Crew, ListUnit.Person).Text("product", r => r.Rate?.Product).Number("rate", ListOrigin.Stated, ListUnit.TonnesPerHour, r => (decimal?)r.Rate?.TonnesPerHour, "net").Text("fed from, where not the bin of its flour", r => r.Rate?.Bin),
            (mill, ask) => KeepLineBook.Newest(mill).Book.Lines.Where(l => ask.Names(l.Code)).SelectMany(l => l.Makes.Select(m => (LineRate?)m).DefaultIfEmpty().Select(m => (l, m)))),
        MillList.Of("packing-changes", "Rules for changing over, the first that fits holds", new ListOf<(int Number, ChangeRule Rule)>()
                .Whole("rule", r => r.Number).Text("after, any where empty", r => r.Rule.After).Text("into, any where empty", r => r.Rule.Into).YesNo("the other way too", r => r.Rule.EitherWay).Whole("takes", r => r.Rule.Minutes, ListUnit.Minute).Number("flour run through", ListOrigin.Stated, ListUnit.Tonne, r => (decimal)r.Rule.FlushTonnes)
                .Text("that flour goes to", r => r.Rule.FlushTo).YesNo("clean-down", r => r.Rule.IsCleanDown),
            (mill, _) => KeepLineBook.Newest(mill).Book.Rules.Select((r, i) => (i + 1, r))),
        MillList.Of("mill-campaigns", "What the mill means to make into flour bins", new ListOf<MillCampaign>()
                .Text("flour bin", c => c.Bin).Moment("from, planned", c => c.From).Moment("until, planned", c => c.Until).Number("rate", ListOrigin.Stated, ListUnit.TonnesPerHour, c => (decimal)c.TonnesPerHour, "as it runs"),
            (mill, ask) => KeepMillCampaigns.Newest(mill).Campaigns.Campaigns.Where(c => ask.Names(c.Bin))),
        MillList.Of("packaging-lots", "Lots of packaging that were on a line", new ListOf<PackagingUse>()
                .Text("what", u => u.Kind.ToString()).Text("lot of the supplier", u => u.Lot).Text("supplier", u => u.Supplier).Text("line", u => u.Line).Text("product", u => u.Product).Moment("loaded", u => u.From).Moment("taken off", u => u.Until).Text("version printed", u => u.LabelVersion),
            (mill, ask) => PackagingUses.All(mill).Where(u => u.From <= ask.AsOf && (ask.From is not { } from || !(u.Until <= from)) && (ask.Until is not { } until || u.From < until) && (ask.Names(u.Lot) || ask.Names(u.Line)))),
        MillList.Of("clean-downs", "Clean-downs of lines after an allergen, as they were signed; no proof that there is none left", new ListOf<(string Code, CleanDown Clean)>()
                .Text("line", r => r.Clean.Line).Text("after product", r => r.Clean.After).Text("cleaned of", r => string.Join(", ", r.Clean.Allergens)).Moment("clean at", r => r.Clean.At).Text("signed by", r => r.Clean.By).Text("how", r => r.Clean.Method).Whole("took", r => r.Clean.Minutes, ListUnit.Minute, ListOrigin.Seen)
                .YesNo("laboratory found nothing", r => r.Clean.Verified?.IsClean).Text("method and result", r => r.Clean.Verified?.Words).Text("verified by", r => r.Clean.Verified?.By).Moment("verified", r => r.Clean.Verified?.At),
            (mill, ask) => CleanDowns.All(mill).Where(c => ask.Holds(c.Clean.At) && ask.Names(c.Clean.Line))),
        MillList.Of("scans", "Scans of pallets and loads that were kept", new ListOf<(string Unit, UnitScan Scan)>().Text("unit", r => r.Unit).Moment("scanned", r => r.Scan.At).Text("by", r => r.Scan.By).Text("what was scanned", r => r.Scan.Text),
            (mill, ask) => UnitScan.All(mill).Where(r => ask.Holds(r.Scan.At) && ask.Names(r.Unit))),
    ];
}
