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
        var (place, (from, water, made)) = (book[lots.Parcels.PlaceOf(parcel)], lots.Making(parcel));
        var isUnit = place.Kind.Role() == PlaceRole.Unit;
        var told = new WrittenEvent("TransformationEvent", lots.Parcels[parcel].Until, zone)
            .Kilograms("inputQuantityList", from).Kilograms("outputQuantityList", (lots.NameOf(parcel), made)).Set("transformationID", names.Paper("run", RunOf(parcel)))
            .Set("bizStep", isUnit ? "packing" : "commissioning").Set("disposition", isUnit ? "container_closed" : "in_progress").At("readPoint", ReadPoint(parcel, place)).At("bizLocation", names.Site).Set("mill:reckoned", reckoned);
        return water > 0 ? told.Set("mill:waterKilograms", water) : told;
    }

    /// <summary>What was packed stands on its unit.</summary>
    public WrittenEvent OnUnit(int parcel)
    {
        var place = book[lots.Parcels.PlaceOf(parcel)];
        return new WrittenEvent("AggregationEvent", lots.Parcels[parcel].Until, zone).Set("parentID", names.Unit(place))
            .Kilograms("childQuantityList", (lots.NameOf(parcel), lots.KilogramsOf(parcel))).Set("action", "ADD").Set("bizStep", place.Kind == PlaceKind.BulkLoad ? "loading" : "packing").Set("disposition", "in_progress")
            .At("readPoint", ReadPoint(parcel, place)).At("bizLocation", names.Site);
    }

    /// <summary>A lot lies in a bin as a layer.</summary>
    public WrittenEvent Stored(int parcel) => new WrittenEvent("ObjectEvent", lots.Parcels[parcel].Until, zone)
        .Kilograms("quantityList", (lots.NameOf(parcel), lots.KilogramsOf(parcel))).Set("action", "OBSERVE").Set("bizStep", "storing").Set("disposition", "in_progress")
        .At("readPoint", names.Inside(book[lots.Parcels.PlaceOf(parcel)])).At("bizLocation", names.Site);

    /// <summary>Lots went to waste: sweepings, spoiled flour, samples used up.</summary>
    public WrittenEvent Wasted(int parcel) => new WrittenEvent("ObjectEvent", lots.Parcels[parcel].Until, zone)
        .Kilograms("quantityList", lots.Making(parcel).From).Set("action", "DELETE").Set("bizStep", "destroying").Set("disposition", "disposed").At("readPoint", ReadPoint(parcel, book[lots.Parcels.PlaceOf(parcel)])).At("bizLocation", names.Site).Set("mill:reckoned", reckoned);

    // A unit was filled where the movement came from.
    private string ReadPoint(int parcel, Place place) => lots.Parcels.MovementOf(parcel) is >= 0 and var movement && book[book.Movements[movement].From] is var from && from.Kind.IsFixed() ? names.Inside(from)
        : place.Kind.IsFixed() ? names.Inside(place) : names.Site;

    private string RunOf(int parcel) => MillNames.CodeIn(lots.NameOf(parcel));
}
