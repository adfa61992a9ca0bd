using Evengrist.Ledger;
using Evengrist.Ledger.Reckoned;
using NodaTime;

namespace Evengrist.Tracing.Bounds;

/// <summary>Bounds of where the suspect is that hold for any outflow from stores. Model: docs/model/recall-bounds.md.</summary>
internal static class BoundsModel
{
    public static BoundsOutcome Answer(Book book, Schedule schedule, IReadOnlyList<Suspicion> starts, Instant asOf, BoundsOptions options)
    {
        var walk = new Walk(book, schedule, starts, (place, clean) => Held.Of(place, clean, options.ThroughIsUnknown));
        walk.To(asOf.ToMicros());
        var traced = walk.Stage.Traced;
        var packages = new Dictionary<PlaceId, Bound>();
        foreach (var (place, batch) in walk.Packed)
        {
            if (batch.Most >= 1 && book[new PlaceId(place)].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote)
            {
                packages.Add(new PlaceId(place), new Bound(batch.Least, Math.Min(batch.Most, traced.Most)));
            }
        }

        var rows = new Dictionary<(string Words, PlaceId Place), Bound>();
        void Add(int place, in Batch batch)
        {
            var key = Whereabouts.KeyOf(book[new PlaceId(place)]);
            rows[key] = rows.GetValueOrDefault(key, Bound.None) + new Bound(batch.Least, batch.Most);
        }

        foreach (var (place, held) in walk.Stage.Holding())
        {
            Add(place, held.All);
        }

        foreach (var flow in walk.UnderWay)
        {
            if (flow.Arrived.Most > 0)
            {
                Add(flow.To, flow.Arrived);
            }
        }

        return new BoundsOutcome(asOf, traced, packages, Joint(book, rows, traced), [.. walk.Stage.Stays(asOf.ToMicros()).Select(s => new Stay(book[new PlaceId(s.Place)], Micros.ToInstant(s.From), Micros.ToInstant(s.Until), Math.Min(s.Most, traced.Most)))], walk.Unexplained);
    }

    // What is for certain elsewhere cannot be here, and what can be nowhere else must be.
    private static BoundedPlace[] Joint(Book book, Dictionary<(string Words, PlaceId Place), Bound> rows, Bound traced)
    {
        var (least, most) = (rows.Values.Sum(b => b.Least), rows.Values.Sum(b => b.Most));
        return rows.Where(r => r.Value.Most >= 1)
            .Select(r =>
            {
                var atLeast = Math.Max(r.Value.Least, traced.Least - (most - r.Value.Most));
                var atMost = Math.Min(r.Value.Most, traced.Most - (least - r.Value.Least));
                return new BoundedPlace(r.Key.Words, r.Key.Place.Value > 0 ? book[r.Key.Place] : null, new Bound(Math.Max(0, atLeast), Math.Max(Math.Max(0, atLeast), atMost)));
            })
            .OrderBy(w => w.Words, StringComparer.Ordinal).ThenByDescending(w => w.Grams.Most).ToArray();
    }
}
