using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>What a tanker's flour was made of, layer by layer, under one outflow hypothesis of the bins it came through: back to what came into its flour bins: milled of one wheat, or rework. Model: docs/model/dispatch.md.</summary>
/// <param name="Outflow">The hypothesis.</param>
/// <param name="Layers">The layers, the largest first; their shares sum to 1 but for <paramref name="LeftOut"/>.</param>
/// <param name="LeftOut">Share not followed: parts below a millionth of the load.</param>
public sealed record TankerLayers(Outflow Outflow, IReadOnlyList<TankerLayer> Layers, double LeftOut)
{
    private const double Least = 1e-6;

    /// <summary>The layers of a load; null where nothing came to it by then.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="reckoning">A reckoning of it, caught up.</param>
    /// <param name="load">The bulk load.</param>
    /// <param name="asOf">The moment looked back from.</param>
    /// <param name="part">The beginning of the part of a milling day in which a moment lies.</param>
    public static TankerLayers? Of(Book book, Reckoning reckoning, PlaceId load, Instant asOf, Func<Instant, Instant> part)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(reckoning);
        ArgumentNullException.ThrowIfNull(part);
        int[] starts = [.. book.MovementsOf(load).Where(i => book.Movements[i].To == load && book.Movements[i].Until <= asOf).Select(reckoning.LoadOf).OfType<int>()];
        var grams = starts.Sum(reckoning.Parcels.GramsOf);
        if (starts.Length == 0 || grams <= 0)
        {
            return null;
        }

        var (graph, shares, order) = (reckoning.Parcels, new Dictionary<int, double>(), new PriorityQueue<int, int>());
        void Give(int parcel, double share)
        {
            if (!shares.TryAdd(parcel, share))
            {
                shares[parcel] += share;
                return;
            }

            order.Enqueue(parcel, -parcel); // parents have lower numbers: the highest left is whole
        }

        foreach (var start in starts)
        {
            Give(start, graph.GramsOf(start) / grams);
        }

        var (found, leftOut) = (new Dictionary<(PlaceId Place, Instant Since), double>(), 0.0);
        while (order.TryDequeue(out var parcel, out _))
        {
            var share = shares[parcel];
            var parents = graph.Rows.ParentsOf(parcel);
            if (share < Least)
            {
                leftOut += share;
            }
            else if (parents.IsEmpty || book[graph.PlaceOf(parcel)].Kind is not (PlaceKind.BulkLoad or PlaceKind.Pallet or PlaceKind.PackingLine or PlaceKind.FlourBin))
            {
                var key = (graph.PlaceOf(parcel), part(graph[parcel].From));
                found[key] = found.GetValueOrDefault(key) + share;
            }
            else
            {
                var of = graph.Rows.SharesOf(parcel);
                for (var i = 0; i < parents.Length; i++)
                {
                    Give(parents[i], share * of[i]);
                }
            }
        }

        return new(reckoning.Outflow, [.. found.OrderByDescending(f => f.Value).ThenBy(f => f.Key.Since).Select(f => new TankerLayer(book[f.Key.Place], f.Key.Since, f.Value))], leftOut);
    }
}

/// <summary>Part of a load that came into flour bins as one.</summary>
/// <param name="From">Where it was made one: a mill unit or its mixer, the mix line or temper bin before it where the unit changed nothing, a rework tote.</param>
/// <param name="Since">Beginning of the part of the day in which it was milled, or put into the tote.</param>
/// <param name="Share">Share of the load, a fraction.</param>
public sealed record TankerLayer(Place From, Instant Since, double Share);
