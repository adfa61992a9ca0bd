using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Drill;

/// <summary>
/// Suspect grams of every package counted a second time, by other code: no parcels, no graph and no sweep, but suspect grams carried
/// through the movements place by place under one outflow hypothesis. Model: docs/model/drill.md.
/// </summary>
internal static class Recount
{
    // Between two looks a store gives one mixture of what left it; a quarter of an hour keeps the layers apart.
    private const long Step = 15L * 60 * 1_000_000;

    public static Dictionary<PlaceId, double> Of(Book book, Schedule schedule, IReadOnlyList<Suspicion> starts, Instant asOf, Outflow outflow)
    {
        var walk = new Walk(book, schedule, starts, (place, clean) => place.Kind.Role() switch
        {
            PlaceRole.Store => new RecountedStore(clean, outflow, place.CoreShare),
            PlaceRole.Through => new RecountedThrough(clean, place.Stirred.Grams),
            PlaceRole.Sink => new RecountedStore(clean, Outflow.Stirred, 0),
            _ => Held.Of(place, clean, throughUnknown: false),
        });
        walk.To(asOf.ToMicros(), Step);
        return walk.Packed.Where(p => book[new PlaceId(p.Key)].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote)
            .ToDictionary(p => new PlaceId(p.Key), p => (p.Value.Least + p.Value.Most) / 2);
    }
}
