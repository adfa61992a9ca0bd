using System.Globalization;
using Evengrist.Intake;
using Evengrist.Quantities;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Lists;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The yard at the moment looked at, as its page shows it and as lists.</summary>
public static class YardLists
{
    private const int MostLanes = 12;

    /// <summary>Trucks in the yard, slots still expected, hours of the day, bins of the day.</summary>
    public static IReadOnlyList<PageList> All { get; } =
    [
        PageList.Answer("/intake/yard", "yard-trucks", "Trucks in the yard at the moment looked at", new ListOf<YardTruck>()
                .Text("state", t => t.State.Words).Text("ticket", t => t.Truck.Code).Text("plate", t => t.Truck.Name).Text("from", t => t.From).Text("class", t => t.Truck.Material).Text("way", t => t.Way).Moment("came", t => t.State.Came).Moment("in this state since", t => t.State.Since)
                .Whole("in this state", t => t.MinutesHere, ListUnit.Minute, ListOrigin.Reckoned).Whole("since it came", t => t.MinutesInAll, ListUnit.Minute, ListOrigin.Reckoned),
            (visit, context) => (Look(visit, context).InYard, "")),
        PageList.Answer("/intake/yard", "yard-expected", "Slots of the milling day whose truck has not come, with the wait that is reckoned", new ListOf<(Booking Slot, YardWait? Wait)>()
                .Text("slot", r => r.Slot.Code).Moment("expected", r => r.Slot.At).Text("from", r => r.Slot.From).Text("class", r => r.Slot.Class).Number("mass expected as it comes", ListOrigin.Stated, ListUnit.Tonne, r => r.Slot.Tonnes).Reckoned("waits", ListUnit.Minute, r => r.Wait?.Minutes).Reckoned("one standard uncertainty of that", ListUnit.Minute, r => r.Wait?.StandardUncertainty),
            (visit, context) => (Waiting(Look(visit, context)), "")),
        PageList.Answer("/intake/yard", "yard-hours", "The milling day at the gate by the hour", new ListOf<YardHour>()
                .Text("hour from, mill time", h => h.Begins).Whole("booked", h => h.Booked, ListUnit.Piece).Whole("came", h => h.Came, ListUnit.Piece, ListOrigin.Seen).Whole("still expected", h => h.Expected, ListUnit.Piece, ListOrigin.Reckoned),
            (visit, context) => (Look(visit, context).Hours, "")),
        PageList.Answer("/intake/yard", "yard-bins", "Trucks of the milling day that were weighed empty, by bin", new ListOf<(string Bin, int Trucks, Mass Net)>()
                .Text("bin", b => b.Bin).Whole("trucks", b => b.Trucks, ListUnit.Piece, ListOrigin.Seen).Mass("net", ListOrigin.Reckoned, b => b.Net),
            (visit, context) => (Look(visit, context).ByBin, "")),
    ];

    /// <summary>The yard as its address asks for it: with so many lanes, or one for each pit.</summary>
    public static YardSight Look(Visit visit, HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(visit);
        ArgumentNullException.ThrowIfNull(context);
        var bookings = Bookings.Of(visit.Mill);
        int? lanes = int.TryParse(context.Request.Query.Typed("lanes"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) && asked is > 0 and <= MostLanes ? asked : null;
        return visit.Mill.Ask(view => new YardSighting(view.Book, visit.AsOf, bookings, visit.Settings, lanes).Look());
    }

    /// <summary>Slots still expected, each with its wait where one is reckoned.</summary>
    public static IEnumerable<(Booking Slot, YardWait? Wait)> Waiting(YardSight yard)
    {
        ArgumentNullException.ThrowIfNull(yard);
        return yard.Expected.Zip(yard.Forecast is YardForecast forecast ? forecast.Waits.TakeLast(yard.Expected.Count).Cast<YardWait?>() : yard.Expected.Select(_ => (YardWait?)null));
    }
}
