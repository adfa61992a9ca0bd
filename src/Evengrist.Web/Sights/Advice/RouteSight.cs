using Evengrist.Intake.Carrying;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Advice;

/// <summary>One pit, what went through it last, and what of that would come with the load.</summary>
/// <param name="Last">The last grain.</param>
/// <param name="Carried">What would come with the load; null where the route was cleaned out since.</param>
/// <param name="IsOther">Whether it was another wheat class than the load's.</param>
public sealed record RouteSight(LastGrain Last, CarryOverOutcome? Carried, bool IsOther)
{
    // A load not weighed out yet is taken for a usual one.
    private static readonly Mass Usual = Mass.FromTonnes(26m);

    /// <summary>The pit the load went through, or every pit it could go through, with what lies in it still.</summary>
    public static IReadOnlyList<RouteSight> All(Book book, TruckSight truck, Instant at, CarryOverSpec spec)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        var gone = truck.Way.FirstOrDefault(m => m.From.Id == truck.Truck.Id && m.To.Kind == PlaceKind.Pit);
        var pits = gone is null ? book.OfKind(PlaceKind.Pit) : [gone.To];
        var load = truck.Net > Mass.Zero ? truck.Net : Usual;
        return [.. pits.Select(p => LastGrain.Before(book, p, gone?.At ?? at, truck.Truck)).OfType<LastGrain>().Select(last => new RouteSight(
            last, last.Swept is null ? CarryOverModel.Of(load, spec) : null, !last.Truck.Material.Equals(truck.Truck.Material, StringComparison.OrdinalIgnoreCase)))];
    }
}
