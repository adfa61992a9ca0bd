using Evengrist.Intake;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>Events that say what one fact of the ledger says: received, shipped, come back, held, released.</summary>
internal sealed class FactEvents(Book book, MillNames names, Bags bags, DateTimeZone zone)
{
    /// <summary>What a movement is as an event by itself; null where it is none.</summary>
    public WrittenEvent? Of(Movement movement)
    {
        if (movement.Mass <= Mass.Zero)
        {
            return null;
        }

        var (from, to) = (book[movement.From], book[movement.To]);
        return (from.Kind, to.Kind) switch
        {
            (PlaceKind.Truck, PlaceKind.Pit or PlaceKind.Bin or PlaceKind.FlourBin) => Received(movement, from, to),
            (_, PlaceKind.Customer) => Shipped(movement, from, to),
            (PlaceKind.Customer, _) => CameBack(movement, from, to),
            (PlaceKind.Opening or PlaceKind.Gain, _) => Found(movement, from, to),
            (PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote, _) when to.Kind.Role() != PlaceRole.Sink => Unpacked(movement, from),
            _ => null,
        };
    }

    /// <summary>What a happening is as an event; null where it is none.</summary>
    public WrittenEvent? Of(Happening happening)
    {
        var place = book[happening.On];
        var recalled = KeptRecall.NumberIn(happening.Kind == HappeningKind.Held ? happening.Words : happening.Kind == HappeningKind.Released ? HeldBefore(happening)?.Words ?? "" : "");
        var (step, disposition) = happening.Kind switch
        {
            HappeningKind.Held => ("holding", recalled is null ? "non_sellable_other" : "recalled"),
            HappeningKind.Released => ("inspecting", "sellable_not_accessible"),
            HappeningKind.Sampled => ("inspecting", "in_progress"),

            // A truck that waits, and one that was turned away and takes its load with it.
            HappeningKind.Decided when LoadDecision.Read(happening) is { Stage: TruckStage.SetAside } => ("holding", "non_sellable_other"),
            HappeningKind.Decided when LoadDecision.Read(happening) is { Stage: TruckStage.TurnedAway } => ("shipping", "returned"),
            _ => ("", ""),
        };
        if (step.Length == 0)
        {
            return null;
        }

        var told = Start("ObjectEvent", happening.At);
        told = place.Kind switch
        {
            PlaceKind.Truck => told.Kilograms("quantityList", (names.Lot(place.Code, place.Material), LoadOf(place, happening.At))),
            _ when place.Kind.Role() == PlaceRole.Unit => told.Epcs("epcList", names.Unit(place)),

            // What lies in a bin is not named one by one: the place is held, and so whatever is in it.
            _ => told.Epcs("epcList", names.Inside(place)),
        };
        return told.Set("action", "OBSERVE").Set("bizStep", step).Set("disposition", disposition).At("readPoint", place.Kind.IsFixed() ? names.Inside(place) : names.Site).At("bizLocation", names.Site).Set("mill:reason", happening.Words)
            .Lasting(happening.Kind == HappeningKind.Held ? "set" : "unset", recalled is null ? "" : "recalled").Set("mill:recall", recalled).Typed("bizTransactionList", "bizTransaction", SampleOf(happening) is { } sample ? [("testres", names.Paper("sample", sample))] : []);
    }

    // A truck is sampled and turned away before it is weighed: what it turned out to bring stands for it, or no mass at all.
    private decimal? LoadOf(Place truck, Instant at)
    {
        var load = book.ThroughputOf(truck.Id, at).In is var then && then > Mass.Zero ? then : book.ThroughputOf(truck.Id, book.Newest ?? at).In;
        return load > Mass.Zero ? load.Kilograms : null;
    }

    // The hold that a release ends.
    private Happening? HeldBefore(Happening release) => book.HappeningsOn(release.On).LastOrDefault(h => h.Kind == HappeningKind.Held && h.At <= release.At);

    private static string? SampleOf(Happening happening) => SampleTaken.Of(happening) is { IsRetained: true } taken ? taken.RetainedId : null;

    private WrittenEvent Received(Movement movement, Place truck, Place to)
    {
        var sources = book.MovementsOf(truck.Id).Select(i => book.Movements[i]).Where(m => m.To == truck.Id).Select(m => book[m.From]).DistinctBy(p => p.Id).OrderBy(p => p.Id).ToList();
        return Start("ObjectEvent", movement.At)
            .Kilograms("quantityList", (names.Lot(truck.Code, truck.Material), movement.Mass.Kilograms)).Set("action", "ADD").Set("bizStep", "receiving").Set("disposition", "in_progress")
            .At("readPoint", names.Inside(to)).At("bizLocation", names.Site)
            .Typed("bizTransactionList", "bizTransaction", ("recadv", names.Paper("ticket", truck.Code)))
            .Typed("sourceList", "source", sources.Select(s => ("location", names.Outside(s)))).Typed("destinationList", "destination", ("location", names.Site))
            .Ilmd(("mill:wheatClass", truck.Material), ("mill:origin", string.Join(", ", sources.Select(s => s.Code))));
    }

    private WrittenEvent Shipped(Movement movement, Place from, Place to) => Goods(Start("ObjectEvent", movement.At), movement, from)
        .Set("action", "OBSERVE").Set("bizStep", "shipping").Set("disposition", "in_transit").At("readPoint", names.Site)
        .Typed("sourceList", "source", ("owning_party", names.Mill)).Typed("destinationList", "destination", ("owning_party", names.Party(to)), ("location", names.Outside(to)))
        .Set("mill:kilograms", movement.Mass.Kilograms);

    private WrittenEvent CameBack(Movement movement, Place from, Place to) => Goods(Start("ObjectEvent", movement.At), movement, to)
        .Set("action", "OBSERVE").Set("bizStep", "receiving").Set("disposition", "returned").At("readPoint", names.Site)
        .Typed("sourceList", "source", ("owning_party", names.Party(from)), ("location", names.Outside(from))).Typed("destinationList", "destination", ("owning_party", names.Mill))
        .Set("mill:kilograms", movement.Mass.Kilograms);

    // Stock that a count or the opening of the ledger found: of unknown origin, by the name of where it is booked from.
    private WrittenEvent Found(Movement movement, Place from, Place to) => Start("ObjectEvent", movement.At)
        .Kilograms("quantityList", (names.Lot(from.Code, from.Material), movement.Mass.Kilograms)).Set("action", "ADD").Set("bizStep", "stock_taking").Set("disposition", "in_progress")
        .At("readPoint", to.Kind.IsFixed() ? names.Inside(to) : names.Site).At("bizLocation", names.Site).Ilmd(("mill:wheatClass", from.Material));

    private WrittenEvent Unpacked(Movement movement, Place from) => Start("AggregationEvent", movement.At).Set("parentID", names.Unit(from))
        .Goods("childQuantityList", (bags.LotOf(book, from) ?? names.Lot(from.Code, from.Material), movement.Mass.Kilograms), bags.On(book, from, movement.Mass)).Set("action", "DELETE").Set("bizStep", "unpacking").Set("disposition", "in_progress")
        .At("readPoint", names.Site).At("bizLocation", names.Site);

    private WrittenEvent Goods(WrittenEvent told, Movement movement, Place unit) =>
        unit.Kind == PlaceKind.Truck ? told.Kilograms("quantityList", (names.Lot(unit.Code, unit.Material), movement.Mass.Kilograms)) : told.Epcs("epcList", names.Unit(unit));

    private WrittenEvent Start(string type, Instant at) => new(type, at, zone);
}
