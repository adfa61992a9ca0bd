using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Lists;
using Evengrist.Tracing;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Traces;

/// <summary>What a trace says, as lists that are taken out: packages reached, origins, customers.</summary>
public static class TraceLists
{
    /// <summary>Packages that what is asked about has reached.</summary>
    public static (TakenList? List, string Why) Reach(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, "reach", sight => Packages(sight.Reach!).List("reach", $"What {sight.Place.Code} has reached", sight.Reach!.Packages));

    /// <summary>Origins of what is asked about.</summary>
    public static (TakenList? List, string Why) Roots(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, "roots", sight => Origins(sight.Roots!).List("roots", $"Where {sight.Place.Code} came from", sight.Roots!.Roots));

    /// <summary>Customers that what is asked about has reached, a row for each package that left.</summary>
    public static (TakenList? List, string Why) Customers(Visit visit, HttpContext context, ListAsk ask) => Of(visit, context, "reach", sight => new ListOf<(Consignee Customer, Reached Package)>()
        .Text("customer", r => r.Customer.Words).Text("package", r => r.Package.Place.Code).Text("product", r => r.Package.Place.Material).Moment("left", r => r.Package.Left).Mass("mass", ListOrigin.Seen, r => r.Package.Mass)
        .Reckoned("of what was traced, expected", ListUnit.Kilogram, r => r.Package.Grams.Expected / 1000).Reckoned("of what was traced, most", ListUnit.Kilogram, r => r.Package.Grams.Most / 1000)
        .List("customers-reached", $"Customers that {sight.Place.Code} has reached", sight.Consignees.Where(c => c.Place is not null).SelectMany(c => c.Packages.Select(p => (c, p)))));

    private static (TakenList? List, string Why) Of(Visit visit, HttpContext context, string way, Func<TraceSight, TakenList> list)
    {
        var asked = TraceVisit.Of(visit, TraceVisit.Read(context.Request.Query) with { Way = way });
        return asked.Sight is not { } sight ? (null, asked.Faults.Count > 0 ? string.Join(" ", asked.Faults) : "Say what to trace: add ?code=")
            : sight.Nothing is { } nothing ? (null, nothing) : (list(sight), "");
    }

    private static ListOf<Reached> Packages(ReachOutcome reach)
    {
        var list = new ListOf<Reached>().Text("package", p => p.Place.Code).Text("kind", p => p.Place.Kind.Words()).Text("product", p => p.Place.Material).Moment("made", p => p.Made).Mass("mass", ListOrigin.Seen, p => p.Mass)
            .Reckoned("of it, least", ListUnit.Kilogram, p => p.Grams.Least / 1000).Reckoned("of it, expected", ListUnit.Kilogram, p => p.Grams.Expected / 1000).Reckoned("of it, most", ListUnit.Kilogram, p => p.Grams.Most / 1000);
        foreach (var (belief, h) in reach.Beliefs.Select((b, h) => (b, h)))
        {
            list.Reckoned($"of it, {belief.Outflow.Words()}", ListUnit.Kilogram, p => p.Grams.Each[h] / 1000);
        }

        return list.Reckoned("chance over the threshold", ListUnit.Percent, p => 100 * p.ChanceOverThreshold).Text("where now", p => p.Where?.Code ?? "in stock").Moment("left", p => p.Left).Text("on hold, because", p => p.Hold?.Words);
    }

    private static ListOf<Root> Origins(RootsOutcome roots)
    {
        var list = new ListOf<Root>().Text("truck", r => r.Truck?.Code).Text("origin", r => r.Origin.Code).Text("kind", r => r.Origin.Kind.Words()).Text("farm and district", TraceWords.Origin).Text("class", r => r.Truck?.Material ?? r.Origin.Material)
            .Reckoned("share, expected", ListUnit.Percent, r => 100 * r.Share.Expected).Reckoned("mass, expected", ListUnit.Kilogram, r => Grams(roots, r).Expected / 1000).Reckoned("mass, least", ListUnit.Kilogram, r => Grams(roots, r).Least / 1000).Reckoned("mass, most", ListUnit.Kilogram, r => Grams(roots, r).Most / 1000);
        foreach (var (belief, h) in roots.Beliefs.Select((b, h) => (b, h)))
        {
            list.Reckoned($"share, {belief.Outflow.Words()}", ListUnit.Percent, r => 100 * r.Share.Each[h]);
        }

        return list;
    }

    private static Trio Grams(RootsOutcome roots, Root root) => Trio.Of([root.Share.Each.Zip(roots.Grams.Each, (share, whole) => share * whole).ToArray()], roots.Beliefs);
}
