using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>How much of what was traced forward is where at the moment asked; over all of them each hypothesis sums to what was traced.</summary>
/// <param name="Words">Where, in words: <c>in bins and machines</c>, <c>packed, in stock</c>, <c>with customers</c>, <c>loss and waste</c>.</param>
/// <param name="Place">The one place, where it is one; null for a sum over packages.</param>
/// <param name="Grams">How much of the thing itself, as it went in.</param>
public sealed record Whereabouts(string Words, Place? Place, Spread Grams)
{
    internal static (string Words, PlaceId Place) KeyOf(Place place) => place.Kind switch
    {
        PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote => ("packed, in stock", default),
        PlaceKind.Truck => ("on trucks", default),
        PlaceKind.Customer => ("with customers", place.Id),
        _ when place.Kind.Role() == PlaceRole.Sink => ("loss, waste and shortage", place.Id),
        _ => ("in bins and machines", place.Id),
    };
}
