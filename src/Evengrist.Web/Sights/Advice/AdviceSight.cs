using Evengrist.Intake;
using Evengrist.Intake.Deciding;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Advice;

/// <summary>What is advised for a truck as of a moment, from all that stands on its ticket.</summary>
/// <param name="Load">What is known.</param>
/// <param name="Advised">The advice.</param>
/// <param name="Routes">What each route would carry over into it.</param>
public sealed record AdviceSight(LoadToDecide Load, LoadAdvice Advised, IReadOnlyList<RouteSight> Routes)
{
    /// <summary>The advice for a truck.</summary>
    public static AdviceSight Of(Mill mill, TruckSight truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(truck);
        var house = HouseRulesShelf.Of(mill);
        var (load, routes) = mill.Ask(view => (LoadOf(view.Book, truck, at), RouteSight.All(view.Book, truck, at, house.CarryOver)));
        return new(load, DecisionModel.Advise(load, house, MarketShelf.Of(mill, house)), routes);
    }

    /// <summary>The advice alone for a ticket; null where there is no such truck by then.</summary>
    public static LoadAdvice? Advise(Mill mill, string ticket, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (terms, house) = (Terms.Of(mill), HouseRulesShelf.Of(mill));
        var load = mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } place && new TruckSighting(view.Book, at, terms, mill.Settings).Look(place) is { } truck ? LoadOf(view.Book, truck, at) : null);
        return load is null ? null : DecisionModel.Advise(load, house, MarketShelf.Of(mill, house));
    }

    private static LoadToDecide LoadOf(Book book, TruckSight truck, Instant at)
    {
        var happened = book.HappeningsOn(truck.Truck.Id).Where(h => h.At <= at).ToArray();
        var seen = happened.Where(h => h.Kind == HappeningKind.Observed).ToArray();
        return new LoadToDecide([.. truck.Readings.Where(r => r.What is not (Property.GrossWeight or Property.TareWeight)).Select(Finding.Of)])
        {
            Seen = seen.Length == 0 ? null : [.. seen.SelectMany(h => LoadSigns.In(h.Words)).Distinct()],
            Trailer = happened.Where(h => h.Kind == HappeningKind.Declared).Select(TrailerHistory.Read).LastOrDefault(t => t is not null),
            Contract = truck.Terms,
        };
    }
}
