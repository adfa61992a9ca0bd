using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Lists;
using Evengrist.Tracing.Recall;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall that is asked about, as lists that are taken out before anybody issues it: packages of the net taken, nets, customers, where it is, what is still unknown.</summary>
public static class RecallLists
{
    /// <summary>Packages of the net taken.</summary>
    public static (TakenList? List, string Why) Packages(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, sight =>
    {
        var list = new ListOf<RecallPackage>().Text("package", p => p.Place.Code).Text("kind", p => p.Place.Kind.Words()).Text("product", p => p.Place.Material).Moment("made", p => p.Made).Mass("mass", ListOrigin.Seen, p => p.Mass)
            .Reckoned("suspect, least", ListUnit.Kilogram, p => p.Grams.Least / 1000).Reckoned("suspect, expected", ListUnit.Kilogram, p => p.Grams.Expected / 1000).Reckoned("suspect, most", ListUnit.Kilogram, p => p.Grams.Most / 1000);
        foreach (var (belief, h) in sight.Outcome.Beliefs.Select((b, h) => (b, h)))
        {
            list.Reckoned($"suspect, {belief.Outflow.Words()}", ListUnit.Kilogram, p => p.Grams.Each[h] / 1000);
        }

        return list.Reckoned("suspect, least under any outflow", ListUnit.Kilogram, p => p.Bound.Least / 1000).Reckoned("suspect, most under any outflow", ListUnit.Kilogram, p => p.Bound.Most / 1000)
            .Reckoned("chance over the threshold", ListUnit.Percent, p => 100 * p.Chance).Text("where now", p => p.Where?.Code ?? "in stock").Moment("left", p => p.Left).Text("on hold, because", p => p.Hold?.Words)
            .List("recall-packages", $"Packages of the net taken: {RecallWords.Of(sight.Net.Kind)}", sight.Net.Packages);
    });

    /// <summary>The nets beside each other.</summary>
    public static (TakenList? List, string Why) Nets(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, sight => new ListOf<(Net Net, decimal? Cost)>()
        .Text("net", n => RecallWords.Of(n.Net.Kind)).Whole("packages", n => n.Net.Packages.Count, origin: ListOrigin.Reckoned).Mass("whole", ListOrigin.Reckoned, n => n.Net.Balance.Made).Mass("in stock", ListOrigin.Reckoned, n => n.Net.Balance.Stock)
        .Mass("of it held", ListOrigin.Reckoned, n => n.Net.Balance.Held).Mass("shipped", ListOrigin.Reckoned, n => n.Net.Balance.Shipped).Mass("used", ListOrigin.Reckoned, n => n.Net.Balance.Used).Mass("of the whole, came back", ListOrigin.Reckoned, n => n.Net.Balance.Returned).Whole("customers", n => n.Net.Consignees.Count, origin: ListOrigin.Reckoned)
        .Reckoned("suspect inside, expected", ListUnit.Kilogram, n => n.Net.ExpectedInside / 1000).Reckoned("suspect outside, expected", ListUnit.Kilogram, n => n.Net.ExpectedOutside / 1000)
        .Reckoned("chance of missing", ListUnit.Percent, n => 100 * n.Net.ChanceOfMissing).Whole("packages that can be missed under some outflow", n => n.Net.CanBeMissed, origin: ListOrigin.Reckoned).Number("cost at the prices typed, money", ListOrigin.Reckoned, null, n => n.Cost)
        .List("recall-nets", "How wide a recall can be cast", sight.Outcome.Nets.Zip(sight.Costs, (net, cost) => (net, cost.Cost))));

    /// <summary>What of the net taken went to customers, a row for each delivery.</summary>
    public static (TakenList? List, string Why) Customers(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, sight => new ListOf<Delivery>()
        .Text("customer", d => d.Customer.Code).Text("name", d => d.Customer.Name).Text("package", d => d.Package.Code).Text("product", d => d.Package.Material).Moment("made", d => d.Made).Moment("left", d => d.Left).Mass("mass delivered", ListOrigin.Seen, d => d.Mass)
        .List("recall-customers", "Customers to tell", sight.Deliveries));

    /// <summary>Where what is suspect is now.</summary>
    public static (TakenList? List, string Why) Where(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, sight => new ListOf<RecallWhere>()
        .Text("where", w => w.Words).Text("place", w => w.Place?.Code).Reckoned("least", ListUnit.Kilogram, w => w.Grams.Least / 1000).Reckoned("expected", ListUnit.Kilogram, w => w.Grams.Expected / 1000).Reckoned("most", ListUnit.Kilogram, w => w.Grams.Most / 1000)
        .Reckoned("least under any outflow", ListUnit.Kilogram, w => w.Bound.Least / 1000).Reckoned("most under any outflow", ListUnit.Kilogram, w => w.Bound.Most / 1000)
        .List("recall-where", "Where what is suspect is now", sight.Outcome.Where));

    /// <summary>What is still unknown.</summary>
    public static (TakenList? List, string Why) Unknown(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, sight => new ListOf<StillUnknown>()
        .Text("what", u => RecallWords.Heading(u.Kind)).Text("place", u => u.Place?.Code).Reckoned("up to", ListUnit.Kilogram, u => u.Grams / 1000).Moment("from", u => u.From).Moment("until", u => u.Until).Text("others", u => string.Join(", ", u.Others.Select(o => o.Code))).Text("what to do", u => RecallWords.Of(u, visit.Units, visit.Say))
        .List("recall-unknown", "What is still unknown", sight.Outcome.Unknown));

    private static (TakenList? List, string Why) Of(Visit visit, HttpContext context, Func<RecallSight, TakenList> list)
    {
        var asked = RecallVisit.Of(visit, context.Request.Query);
        return asked.Sight is { } sight ? (list(sight), "") : (null, asked.Faults.Count > 0 ? string.Join(" ", asked.Faults) : "Say what is suspect: add ?what=");
    }
}
