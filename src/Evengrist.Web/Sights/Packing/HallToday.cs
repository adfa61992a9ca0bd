using System.Globalization;
using Evengrist.Packing.Orders;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Records.Packing.Rework;
using Evengrist.Web.Face;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>What waits for a person in packing and at the ramp: loads with a pallet on hold, orders past due, late by the plan in force or no longer covered by it, flour bins soon empty or full, totes past their age.</summary>
public static class HallToday
{
    private const int ToldOfEach = 3;
    private const double BinHours = 12;

    /// <summary>What waits, with that of the hall behind the holds and stops and before the rest.</summary>
    public static IReadOnlyList<Waiting> Told(Mill mill, IReadOnlyList<Waiting> waiting, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(waiting);
        return
        [
            .. waiting.Where(w => w.Kind is StateKind.Hold or StateKind.Stop), .. Few(Loads(mill, at), "loads", "/dispatch"), .. Few(Orders(mill, at), "orders", "/packing/orders"), .. Bins(mill, at), .. Few(Totes(mill, at), "totes", "/packing/rework"),
            .. waiting.Where(w => w.Kind is not (StateKind.Hold or StateKind.Stop)),
        ];
    }

    private static Waiting[] Few(Waiting[] all, string what, string address) => all.Length <= ToldOfEach + 1 ? all
        : [.. all.Take(ToldOfEach), all[ToldOfEach] with { Place = null, Text = string.Create(CultureInfo.InvariantCulture, $"and {all.Length - ToldOfEach} more like these"), At = null, Link = new(address, what) }];

    private static Waiting[] Loads(Mill mill, Instant at)
    {
        var open = DispatchShelf.All(mill).Where(l => l.IsOpen && l.Packages.Count > 0).ToArray();
        return open.Length == 0 ? [] : mill.Ask(view => open
            .Select(l => (Load: l, Held: l.Packages.Select(p => p.Code).Where(c => view.Book.Find(c) is { } place && view.Book.HoldOn(place.Id, at) is not null).ToArray()))
            .Where(l => l.Held.Length > 0)
            .Select(l => new Waiting(StateKind.Hold, null, $"to {l.Load.Consignee} waits: on HOLD on it {(l.Held.Length == 1 ? "is" : "are")} {string.Join(", ", l.Held.Take(ToldOfEach))}{(l.Held.Length > ToldOfEach ? " and more" : "")}", null) { Link = new($"/dispatch/load?n={Uri.EscapeDataString(l.Load.Number)}", l.Load.Number) }).ToArray());
    }

    private static Waiting[] Orders(Mill mill, Instant at)
    {
        var ends = PackingPlans.InForce(mill, at)?.Plan.Runs.GroupBy(r => r.Order, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.Max(r => r.Until), StringComparer.OrdinalIgnoreCase) ?? [];
        return
        [
            .. HallRecords.Standings(mill, at).Where(o => o.Remaining.Grams > 0).Select(o => (Of: o, Wrong: Wrong(o, ends.TryGetValue(o.Order.Number, out var end) ? end : null, at))).Where(o => o.Wrong.Length > 0)
                .OrderBy(o => o.Of.Order.Due)
                .Select(o => new Waiting(StateKind.Watch, null, string.Create(CultureInfo.InvariantCulture,
                    $"of {(o.Of.Order.Customer.Length > 0 ? o.Of.Order.Customer : "the own warehouse")}, {o.Of.Order.Product}: {o.Wrong}, {o.Of.Remaining.Tonnes:0.0} t still to be packed, due"), o.Of.Order.Due) { Link = new($"/packing/orders/{Uri.EscapeDataString(o.Of.Order.Number)}", o.Of.Order.Number) }),
        ];
    }

    private static string Wrong(OrderStanding order, Instant? end, Instant at)
    {
        string[] wrong =
        [
            .. order.Order.Due < at ? ["past due"] : end > order.Order.Due ? [string.Create(CultureInfo.InvariantCulture, $"{(end.Value - order.Order.Due).TotalHours:0.0} h late by the plan in force")] : Array.Empty<string>(),
            .. order.IsPlannedShort ? [string.Create(CultureInfo.InvariantCulture, $"{order.NotPlanned.Tonnes:0.0} t of it {(end <= at ? "not packed when its run ended, and" : "are")} not in the plan in force")] : Array.Empty<string>(),
        ];
        return string.Join(", ", wrong);
    }

    private static IEnumerable<Waiting> Bins(Mill mill, Instant at)
    {
        foreach (var bin in HallRecords.Bins(mill, at, layered: false))
        {
            if ((bin.MinutesToEmpty ?? bin.MinutesToFull) is { } minutes && minutes <= 60 * BinHours)
            {
                yield return new Waiting(StateKind.Watch, bin.Place, string.Create(CultureInfo.InvariantCulture,
                    $"{(bin.MinutesToEmpty is null ? "full" : "empty")} in {Math.Max(0, minutes) / 60:0.0} h{(bin.MinutesUncertainty is { } u ? $" ± {u / 60:0.0} h" : "")}, if the flows of the last {HallRecords.FlowHours} h go on"), null);
            }
        }
    }

    private static Waiting[] Totes(Mill mill, Instant at)
    {
        var most = KeepReworkRules.Newest(mill).Rules.MostDays;
        return [.. ReworkLedger.Ages(mill, at).Where(t => t.Days > most).Select(t => new Waiting(StateKind.Watch, t.Tote, string.Create(CultureInfo.InvariantCulture, $"{t.Days:0} days old, {t.Kilograms:#,0} kg of rework: the rules ask after {most} days"), null) { Link = new("/packing/rework", t.Tote.Code) })];
    }
}
