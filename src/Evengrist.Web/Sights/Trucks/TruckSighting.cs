using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Looks at trucks at one moment.</summary>
public sealed class TruckSighting(Book book, Instant at, Terms terms, MillSettings settings)
{
    /// <summary>The milling day of a moment.</summary>
    public LocalDate DayOf(Instant moment) => MillingDay.Of(moment, settings.Zone, settings.DayStart);

    /// <summary>Trucks that had come by the moment looked at, with when, oldest first.</summary>
    public IReadOnlyList<(Place Truck, Instant At)> Come() =>
        [.. book.OfKind(PlaceKind.Truck).Select(t => (t, At: Arrived(t))).Where(t => t.At <= at).Select(t => (t.t, t.At!.Value)).OrderBy(t => t.Value).ThenBy(t => t.t.Code, StringComparer.Ordinal)];

    /// <summary>One truck; null where it had not come by then.</summary>
    public TruckSight? Look(Place truck) => Arrived(truck) is { } came && came <= at ? Look(truck, came) : null;

    /// <summary>One truck that came at a moment.</summary>
    public TruckSight Look(Place truck, Instant came)
    {
        var readings = Truckload.Readings(book, truck, at);
        var way = LoadWay.Of(book, truck, at).Select(m => MovementLine.Of(book, m)).ToArray();
        var arrival = Arrival.Of(book, truck);
        var loaded = way.Where(m => m.To.Id == truck.Id).ToArray();
        var happened = book.HappeningsOn(truck.Id).Where(h => h.At <= at).ToArray();
        var contract = happened.LastOrDefault(h => h.Kind == HappeningKind.Contract);
        var named = contract is null ? null : terms.Find(contract.Text);
        var weighing = Truckload.WeighingOf(readings);
        return new TruckSight(truck, came, weighing?.Net ?? Mass.FromGrams(loaded.Sum(m => m.Mass.Grams)))
        {
            State = TruckStages.Of(book, truck, at)!,
            Newest = LoadWay.Newest(book, truck),
            Arrival = arrival,
            Source = loaded.FirstOrDefault()?.From ?? (arrival is null ? null : book.Find(arrival.From)),
            Bin = way.LastOrDefault(m => m.To.Kind is PlaceKind.Bin or PlaceKind.FlourBin)?.To,
            Way = way,
            Readings = readings,
            Contract = contract,
            Terms = named,
            Outcome = named is null ? null : Truckload.Settle(readings, named, DayOf(came), Truckload.Observed(book, truck, at)),
            Hold = book.HoldOn(truck.Id, at),
            NotForSettlement = terms.Load(book, truck, at)?.NotForSettlement() ?? [],
            Notes = [.. happened.Where(h => h.Kind == HappeningKind.Note)],
        };
    }

    /// <summary>When a truck came to the gate; else when it was weighed full, else when it was loaded, else nothing.</summary>
    private Instant? Arrived(Place truck) =>
        book.HappeningsOn(truck.Id).FirstOrDefault(h => h.Kind == HappeningKind.Arrived)?.At
        ?? book.ReadingsOn(truck.Id).FirstOrDefault(r => r.What == Property.GrossWeight)?.At
        ?? book.MovementsOf(truck.Id).Select(i => (Instant?)book.Movements[i].At).FirstOrDefault();
}
