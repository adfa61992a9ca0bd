using System.Reflection;
using Evengrist.Web.Sights.Advice;
using Evengrist.Web.Sights.Balance;
using Evengrist.Web.Sights.Clock;
using Evengrist.Web.Sights.Events;
using Evengrist.Web.Sights.Flow;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Sights.Season;
using Evengrist.Web.Sights.Streams;
using Evengrist.Web.Sights.Traces;
using Evengrist.Web.Sights.Trucks;
using Microsoft.AspNetCore.Components;

namespace Evengrist.Web.Sights.Lists;

/// <summary>Which lists stand on which page. A list is added here, where its page is named, and in <c>MillLists</c>, where its columns are.</summary>
public static class PageLists
{
    private static readonly HashSet<string> Alone = new([.. typeof(PageLists).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template).Where(t => !t.Contains('{', StringComparison.Ordinal))], StringComparer.OrdinalIgnoreCase);

    /// <summary>All of them; of a page's own, the first is meant where the address names none.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Of("/ledger", "facts"), PageList.Of("/ledger", "movements"), PageList.Of("/ledger", "readings"), PageList.Of("/ledger", "happenings"),
        PageList.Of("/ledger/balance", "balance"),
        PageList.Of("/bins", "bins"), PageList.Of("/bins", "layers"),
        PageList.Of("/bins/{Code}", "movements"), PageList.Of("/bins/{Code}", "layers"), PageList.Of("/bins/{Code}", "readings"), PageList.Of("/bins/{Code}", "stored-layers"), PageList.Of("/bins/{Code}", "cable-readings"),
        PageList.Of("/intake", "trucks"), PageList.Of("/intake/sampling", "retained-samples"), PageList.Of("/intake/statement", "accounts"), PageList.Of("/intake/statement", "payments"), PageList.Of("/intake/statement", "settlement-lines"), PageList.Of("/intake/season", "accounts"), PageList.Of("/intake/{Code}", "settlement-lines"), PageList.Of("/intake/receipts", "trucks"),
        PageList.Of("/intake/parties", "parties"), PageList.Of("/intake/parties", "fields"), PageList.Of("/intake/parties", "vehicles"), PageList.Of("/intake/certificates", "instrument-certificates"), PageList.Of("/intake/{Code}", "readings"), PageList.Of("/intake/{Code}", "movements"),
        PageList.Of("/mix/sheets", "mix-sheets"), PageList.Of("/tempering", "temper-log"), PageList.Of("/tempering/bins/{Code}", "temper-log"),
        PageList.Of("/milling/tests", "mill-tests"), PageList.Of("/streams", "stream-surveys"), new("stream-curve", "/streams", "Flour streams from the least ash to the most, added up", StreamLists.Curve), PageList.Of("/streams/survey", "stream-surveys"),
        PageList.Of("/laboratory", "lab-samples"), PageList.Of("/laboratory", "lab-results"), PageList.Of("/laboratory/plan", "lab-samples"), PageList.Of("/laboratory/lots", "lots"), PageList.Of("/laboratory/lots", "lot-results"), PageList.Of("/laboratory/lots", "lot-decisions"),
        PageList.Of("/laboratory/lots/{Code}", "lot-results"), PageList.Of("/laboratory/lots/{Code}", "lot-decisions"), PageList.Of("/laboratory/certificates", "certificates"), PageList.Of("/laboratory/specifications", "specifications"),
        PageList.Of("/laboratory/charts", "chart-points"), PageList.Of("/laboratory/charts", "chart-limits"), PageList.Of("/laboratory/charts", "readings"), PageList.Of("/laboratory/watch", "instrument-checks"), PageList.Of("/laboratory/instruments", "instrument-checks"), PageList.Of("/laboratory/bake", "bakes"), PageList.Of("/laboratory/bake/kept", "bakes"),
        PageList.Of("/packing/products", "products"), PageList.Of("/packing/orders", "packing-orders"), PageList.Of("/packing", "packing-orders"), PageList.Of("/packing/codes", "unit-numbers"), PageList.Of("/packing/labels", "unit-numbers"),
        PageList.Of("/packing/content", "weighed-hours"), PageList.Of("/packing/content/inspections", "net-content-inspections"),
        PageList.Of("/dispatch", "dispatch-loads"), PageList.Of("/dispatch", "dispatch-packages"), PageList.Of("/dispatch/records", "release-records"), PageList.Of("/dispatch/consignees", "consignees"), PageList.Of("/tracing/recalls", "recalls"), PageList.Of("/tracing/structure", "recall-sizes"),
        PageList.Of("/intake/contracts", "contracts"), PageList.Of("/intake/contracts", "contract-scales"), PageList.Of("/intake/bookings", "bookings"), PageList.Of("/milling", "flow-sheet-passages"), PageList.Of("/milling", "flow-sheet-ways"), PageList.Of("/milling/sheet", "flow-sheet-passages"), PageList.Of("/milling/sheet", "flow-sheet-ways"),
        PageList.Of("/streams/additions", "additive-lots"), PageList.Of("/streams/additions", "feeder-doses"), PageList.Of("/streams/additions", "feeder-stops"), PageList.Of("/streams/additions/tables", "enrichment-tables"),
        PageList.Of("/packing", "packing-runs"), PageList.Of("/packing", "clean-downs"), PageList.Of("/packing/lines", "packing-lines"), PageList.Of("/packing/lines", "packing-changes"), PageList.Of("/packing/lines", "mill-campaigns"), PageList.Of("/packing/lines", "packaging-lots"), PageList.Of("/packing/codes", "scans"),
        PageList.Of("/packing/rework", "rework-totes"), PageList.Of("/packing/rework", "rework-moves"), PageList.Of("/tracing/drill", "recall-drills"),
        PageList.Of("/bins/storage", "bin-risks"), PageList.Of("/bins/storage", "stored-layers"), PageList.Of("/bins/storage", "cable-points"), PageList.Of("/bins/storage", "cable-readings"), PageList.Of("/bins/storage", "layers"), PageList.Of("/bins/storage", "readings"),
        PageList.Of("/tracing", "packages"), new("reach", "/tracing", "Packages that what is traced has reached", TraceLists.Reach), new("customers-reached", "/tracing", "Customers that what is traced has reached", TraceLists.Customers), new("roots", "/tracing", "Where what is traced came from", TraceLists.Roots),
        new("recall-packages", "/tracing/recall", "Packages of the net taken", RecallLists.Packages), new("recall-nets", "/tracing/recall", "How wide a recall can be cast", RecallLists.Nets), new("recall-customers", "/tracing/recall", "Customers to tell", RecallLists.Customers), new("recall-where", "/tracing/recall", "Where what is suspect is now", RecallLists.Where), new("recall-unknown", "/tracing/recall", "What is still unknown", RecallLists.Unknown),
        PageList.Of("/season", "season-uses"), PageList.Of("/season", "season-flours"), PageList.Of("/season", "season-purchases"), PageList.Of("/season", "season-stocks"), PageList.Of("/season/kept", "season-uses"), PageList.Of("/season/kept", "season-flours"),
        PageList.Of("/season/buying", "season-purchases"), PageList.Of("/ledger/events", "events-taken-in"), .. SentLists.All, PageList.Of("/mix/sheets", "mix-drawn"), PageList.Of("/laboratory", "lab-due"), PageList.Of("/laboratory/plan", "lab-due"), PageList.Of("/season", "season-misses"), PageList.Of("/season/kept", "season-misses"), PageList.Of("/dispatch/load", "load-orders", "n"), PageList.Of("/dispatch", "load-orders"), .. TrialLists.All, .. WatchLists.All, .. MillsLists.All,
        PageList.Of("/intake/grades", "grade-limits", "standard"), PageList.Of("/intake/grades/house", "house-classes"), PageList.Of("/intake/grades/house", "grade-limits"), PageList.Of("/intake/limits", "market-limits"), PageList.Of("/intake/limits", "house-rules"), .. YardLists.All, PageList.Of("/intake/yard", "bookings"), .. AdviceLists.All,
        PageList.Of("/mix/relations", "flour-relations"), PageList.Of("/mix/relations", "relation-runs"), PageList.Of("/mix/set", "mix-sheets"), PageList.Of("/tempering/aims", "temper-aims"), PageList.Of("/bins/storage/constants", "storage-constants"), .. BalanceLists.All,
        PageList.Of("/milling/trials", "mill-trials"), PageList.Of("/milling/trial", "mill-trials"), PageList.Of("/milling/tests/test", "mill-tests", "code"), .. SuggestLists.All, .. DriftLists.All, .. ClockLists.All, .. DivideLists.All,
        .. PlanLists.All, PageList.Of("/laboratory/rejudge", "found-wrong"), PageList.Of("/laboratory/methods", "lab-methods"), PageList.Of("/laboratory/instruments", "lab-instruments"), PageList.Of("/laboratory/instruments", "instrument-calibrations"), PageList.Of("/laboratory/watch", "instrument-biases"), PageList.Of("/laboratory/plan", "lab-plan"),
        PageList.Of("/laboratory/legal-rules", "legal-rules"), PageList.Of("/laboratory/specifications", "legal-rules"), PageList.Of("/laboratory/release-rules", "release-rules"), PageList.Of("/laboratory/calibration", "spectral-calibrations"), PageList.Of("/laboratory/bake/blend", "measured-blends"),
        PageList.Of("/laboratory/specifications/{Code}", "specifications"), PageList.Of("/laboratory/certificates/{Code}", "certificates"),
        PageList.Of("/packing/lines/book", "packing-lines"), PageList.Of("/packing/lines/book", "packing-changes"), PageList.Of("/packing/lines/campaigns", "mill-campaigns"), PageList.Of("/packing", "packing-bins"), PageList.Of("/packing/orders", "order-standings"), PageList.Of("/packing/orders/{Code}", "packing-orders"), PageList.Of("/packing/orders/{Code}", "order-standings"), PageList.Of("/packing/products/{Code}", "products"), PageList.Of("/packing/content", "tare-samples"), PageList.Of("/packing/content/inspections/{Code}", "net-content-inspections"),
        PageList.Of("/packing/rework/rules", "rework-rules"), PageList.Of("/dispatch/rules", "dispatch-rules"), PageList.Of("/dispatch/load", "dispatch-packages", "n"), PageList.Of("/dispatch/load/layers", "tanker-layers", "n"),
        PageList.Of("/season/terms", "season-demand"), PageList.Of("/season/terms", "season-limits"), PageList.Of("/season/terms", "season-offers"), PageList.Of("/season/terms", "season-arrivals"), .. YearLists.All,
    ];

    /// <summary>Lists of the page with the address, and what the address names; none where it has none.</summary>
    public static IReadOnlyList<(PageList List, string Code)> On(string path)
    {
        // An address that stands for one page alone is no thing's, nor is the form for a new one.
        ArgumentNullException.ThrowIfNull(path);
        var alone = Alone.Contains(path.TrimEnd('/')) || path.EndsWith("/new", StringComparison.OrdinalIgnoreCase);
        return [.. All.Select(l => (List: l, Code: l.CodeIn(path))).Where(l => l.Code is { } code && (!alone || code.Length == 0)).Select(l => (l.List, Code: l.Code!))];
    }
}
