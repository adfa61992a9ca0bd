using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Advice;

/// <summary>What is advised of a load, as lists: rules that speak, and what its routes carry over.</summary>
public static class AdviceLists
{
    private const string Page = "/intake/{Code}/advice";

    /// <summary>Both.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer(Page, "advice", "What is advised of a load, a row for each rule that speaks; a named person decides", new ListOf<(string Ticket, LoadAdvice Advice, Ruling Ruling)>()
                .Text("ticket", r => r.Ticket).Text("advised in all", r => LoadDecision.WordsOf(r.Advice.Kind)).Text("the rule says", r => LoadDecision.WordsOf(r.Ruling.Kind)).Text("because", r => r.Ruling.Reason).Text("caution", r => r.Ruling.Caution).Text("source", r => r.Ruling.Source).Text("how well it is known", r => r.Ruling.Mark.Words())
                .Text("still to ask", r => string.Join("; ", r.Advice.StillToAsk)),
            (visit, context) => Of(visit, context, (truck, sight) => sight.Advised.Rulings.Select(r => (truck.Truck.Code, sight.Advised, r)))),
        PageList.Answer(Page, "carry-over", "What each route would carry over into a load; reckoned", new ListOf<(string Ticket, RouteSight Route)>()
                .Text("ticket", r => r.Ticket).Text("pit", r => r.Route.Last.Through.Code).Text("last through it", r => r.Route.Last.Truck.Code).Text("its class", r => r.Route.Last.Truck.Material).YesNo("another class", r => r.Route.IsOther).Moment("went through", r => r.Route.Last.At).Moment("cleaned out since", r => r.Route.Last.Swept)
                .Number("comes along", ListOrigin.Reckoned, ListUnit.Kilogram, r => r.Route.Carried?.Carried.Value).Number("of the load", ListOrigin.Reckoned, ListUnit.Percent, r => r.Route.Carried?.Share.Value, "by mass").Number("below 0.1 % after", ListOrigin.Reckoned, ListUnit.Tonne, r => r.Route.Carried?.Until.Value),
            (visit, context) => Of(visit, context, (truck, sight) => sight.Routes.Select(r => (truck.Truck.Code, r)))),
    ];

    private static (IEnumerable<T>? Rows, string Why) Of<T>(Visit visit, HttpContext context, Func<TruckSight, AdviceSight, IEnumerable<T>> rows)
    {
        var (terms, code) = (Terms.Of(visit.Mill), Uri.UnescapeDataString(context.Request.Path.Value?.Split('/').ElementAtOrDefault(2) ?? ""));
        var truck = visit.Mill.Ask(view => view.Book.Find(code) is { Kind: PlaceKind.Truck } place ? new TruckSighting(view.Book, visit.AsOf, terms, visit.Settings).Look(place) : null);
        return truck is null ? (null, $"There is no ticket \"{code}\" by then.") : (rows(truck, AdviceSight.Of(visit.Mill, truck, visit.AsOf)), "");
    }
}
