using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>Which movements, parcels and happenings a document tells of.</summary>
internal sealed record Scope(Func<int, bool> Movement, Func<int, bool> Parcel, Func<Happening, bool> Happening)
{
    // A millionth of what is asked about; pruned on what a lot holds in all, never on one way to it.
    private const double Least = 1e-6;

    /// <summary>What happened in a span of time, its end left out.</summary>
    public static Scope Between(Book book, ParcelGraph parcels, Instant from, Instant until)
    {
        bool Holds(Instant at) => at >= from && at < until;
        return new(m => Holds(book.Movements[m].At), p => Holds(parcels[p].Until), h => Holds(h.At));
    }

    /// <summary>What a unit or a source came from and what it has reached.</summary>
    public static Scope Of(Book book, ParcelGraph parcels, Place place)
    {
        var shares = new Dictionary<int, double>();
        var queue = new PriorityQueue<int, int>();
        for (var p = 0; p < parcels.Count; p++)
        {
            if (parcels.PlaceOf(p) == place.Id)
            {
                shares[p] = 1;
                queue.Enqueue(p, -p);
            }
        }

        var own = shares.Keys.ToHashSet();
        var scope = new HashSet<int>(own);
        while (queue.TryDequeue(out var parcel, out _))
        {
            if (shares[parcel] < Least)
            {
                continue;
            }

            scope.Add(parcel);
            var parents = parcels.Rows.ParentsOf(parcel);
            var of = parcels.Rows.SharesOf(parcel);
            for (var i = 0; i < parents.Length; i++)
            {
                if (shares.TryAdd(parents[i], 0))
                {
                    queue.Enqueue(parents[i], -parents[i]);
                }

                shares[parents[i]] += shares[parcel] * of[i];
            }
        }

        Forward(parcels, own, scope);
        return Of(book, parcels, scope);
    }

    private static void Forward(ParcelGraph parcels, HashSet<int> own, HashSet<int> scope)
    {
        var holds = new double[parcels.Count];
        foreach (var p in own)
        {
            holds[p] = 1;
        }

        for (var p = own.Count > 0 ? own.Min() : parcels.Count; p < parcels.Count; p++)
        {
            var parents = parcels.Rows.ParentsOf(p);
            var of = parcels.Rows.SharesOf(p);
            for (var i = 0; i < parents.Length && !own.Contains(p); i++)
            {
                holds[p] += of[i] * holds[parents[i]];
            }

            if (holds[p] >= Least)
            {
                scope.Add(p);
            }
        }
    }

    // The units among them bring what was done to them: loaded, shipped, held.
    private static Scope Of(Book book, ParcelGraph parcels, HashSet<int> scope)
    {
        var units = scope.Select(parcels.PlaceOf).Where(p => book[p].Kind.Role() == PlaceRole.Unit).ToHashSet();
        var movements = scope.Select(parcels.MovementOf).Where(m => m >= 0).ToHashSet();
        return new(m => movements.Contains(m) || units.Contains(book.Movements[m].From) || units.Contains(book.Movements[m].To), scope.Contains, h => units.Contains(h.On));
    }
}
