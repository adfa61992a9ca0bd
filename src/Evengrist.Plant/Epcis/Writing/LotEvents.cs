using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>Events that say what lots were made of and where they were put; reckoned under a hypothesis of how bins empty, and each says so.</summary>
internal sealed class LotEvents(Book book, Lots lots, MillNames names, Outflow outflow, DateTimeZone zone)
{
    private readonly string reckoned = outflow switch
    {
        Outflow.FirstInFirstOut => "which layers left a bin is a hypothesis: first in, first out",
        Outflow.CoreFirst => "which layers left a bin is a hypothesis: core first",
        _ => "which layers left a bin is a hypothesis: stirred",
    };

    /// <summary>A lot made of others: a mix, a run of a machine, a pallet packed, a load loaded.</summary>
    public WrittenEvent Made(int parcel)
    {
        // Several loads that came onto a unit at one moment are one act.
        var place = book[lots.Parcels.PlaceOf(parcel)];
        var isUnit = place.Kind.Role() == PlaceRole.Unit;
        var parts = isUnit ? lots.Together(parcel) : [parcel];
        var (from, water, made) = lots.Making(parts);
        var told = new WrittenEvent("TransformationEvent", lots.Parcels[parcel].Until, zone)
            .Kilograms("inputQuantityList", from).Goods("outputQuantityList", (lots.NameOf(parcel), made), isUnit ? lots.BagsOf(place, lots.MassOf(parts)) : null).Set("transformationID", names.Paper("run", RunOf(parcel)))
            .Set("bizStep", isUnit ? "packing" : "commissioning").Set("disposition", isUnit ? "container_closed" : "in_progress").At("readPoint", ReadPoint(parcel, place)).At("bizLocation", names.Site).Set("mill:reckoned", reckoned);
        return water > 0 ? told.Set("mill:waterKilograms", water) : told;
    }

    /// <summary>What was packed stands on its unit.</summary>
    public WrittenEvent OnUnit(int parcel)
    {
        var (place, mass) = (book[lots.Parcels.PlaceOf(parcel)], lots.MassOf(lots.Together(parcel)));
        return new WrittenEvent("AggregationEvent", lots.Parcels[parcel].Until, zone).Set("parentID", names.Unit(place))
            .Goods("childQuantityList", (lots.NameOf(parcel), mass.Kilograms), lots.BagsOf(place, mass)).Set("action", "ADD").Set("bizStep", place.Kind == PlaceKind.BulkLoad ? "loading" : "packing").Set("disposition", "in_progress")
            .At("readPoint", ReadPoint(parcel, place)).At("bizLocation", names.Site);
    }

    /// <summary>A lot lies in a bin as a layer.</summary>
    public WrittenEvent Stored(int parcel) => new WrittenEvent("ObjectEvent", lots.Parcels[parcel].Until, zone)
        .Kilograms("quantityList", (lots.NameOf(parcel), lots.KilogramsOf(parcel))).Set("action", "OBSERVE").Set("bizStep", "storing").Set("disposition", "in_progress")
        .At("readPoint", names.Inside(book[lots.Parcels.PlaceOf(parcel)])).At("bizLocation", names.Site);

    /// <summary>Lots went to waste: sweepings, spoiled flour, samples used up.</summary>
    public WrittenEvent Wasted(int parcel) => new WrittenEvent("ObjectEvent", lots.Parcels[parcel].Until, zone)
        .Kilograms("quantityList", lots.Making(parcel).From).Set("action", "DELETE").Set("bizStep", "destroying").Set("disposition", "disposed").At("readPoint", ReadPoint(parcel, book[lots.Parcels.PlaceOf(parcel)])).At("bizLocation", names.Site)
        .Set("mill:unit", UnitOf(parcel)).Set("mill:reckoned", reckoned);

    /// <summary>What evaporated or was lost unweighed, and what a count found less than the ledger held.</summary>
    public WrittenEvent Missing(int parcel)
    {
        var (place, (from, water, _)) = (book[lots.Parcels.PlaceOf(parcel)], lots.Making(parcel));
        var told = new WrittenEvent("ObjectEvent", lots.Parcels[parcel].Until, zone)
            .Kilograms("quantityList", from).Set("action", "DELETE").Set("bizStep", place.Kind == PlaceKind.Shortage ? "stock_taking" : "other").Set("disposition", "unknown")
            .At("readPoint", ReadPoint(parcel, place)).At("bizLocation", names.Site).Set("mill:missing", place.Kind == PlaceKind.Shortage ? "a count found less than was booked" : "evaporated or lost unweighed").Set("mill:unit", UnitOf(parcel)).Set("mill:reckoned", reckoned);
        return water > 0 ? told.Set("mill:waterKilograms", water) : told;
    }

    // The unit it was on: of one lot of bags several may go at one moment.
    private string? UnitOf(int parcel) => book[book.Movements[lots.Parcels.MovementOf(parcel)].From] is var from && from.Kind.Role() == PlaceRole.Unit ? names.Unit(from) : null;

    // A unit was filled where the movement came from.
    private string ReadPoint(int parcel, Place place) => lots.Parcels.MovementOf(parcel) is >= 0 and var movement && book[book.Movements[movement].From] is var from && from.Kind.IsFixed() ? names.Inside(from)
        : place.Kind.IsFixed() ? names.Inside(place) : names.Site;

    private string RunOf(int parcel) => Uri.UnescapeDataString(lots.CodeOf(parcel));
}
