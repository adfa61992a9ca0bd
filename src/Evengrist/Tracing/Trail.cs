using Evengrist.Ledger;

namespace Evengrist.Tracing;

/// <summary>Gathers the places a trace went through and the flow between them, from the last walk of one strand.</summary>
internal sealed class Trail(Book book)
{
    private const double Bulk = 1e-3;
    private readonly Dictionary<PlaceId, (long From, long Until, double Share)> places = [];
    private readonly Dictionary<(PlaceId From, PlaceId To), double> links = [];

    public void FollowBack(Strand strand, double grams)
    {
        var (graph, sweep) = (strand.Parcels, strand.Sweep);
        foreach (var parcel in sweep.Reached)
        {
            var share = sweep.ShareOf(parcel);
            if (share >= Bulk)
            {
                See(graph, parcel, share);
            }

            var parents = graph.Rows.ParentsOf(parcel);
            var shares = graph.Rows.SharesOf(parcel);
            for (var i = 0; i < parents.Length; i++)
            {
                Flow(graph.PlaceOf(parents[i]), graph.PlaceOf(parcel), grams * share * shares[i]);
            }
        }
    }

    /// <param name="strand">The strand, after its walk forward.</param>
    /// <param name="asOf">Microseconds; what began later is left out.</param>
    /// <param name="grain">Whether grain is traced: shares are then of the grain, water and additives set aside.</param>
    public void FollowForward(Strand strand, long asOf, bool grain)
    {
        var (graph, sweep) = (strand.Parcels, strand.Sweep);
        foreach (var parcel in sweep.Reached)
        {
            var share = sweep.ShareOf(parcel);
            if (graph.FromOf(parcel) > asOf)
            {
                continue;
            }

            if (share >= Bulk)
            {
                See(graph, parcel, grain ? share / graph.GrainShareOf(parcel) : share);
            }

            var parents = graph.Rows.ParentsOf(parcel);
            var shares = graph.Rows.SharesOf(parcel);
            for (var i = 0; i < parents.Length; i++)
            {
                Flow(graph.PlaceOf(parents[i]), graph.PlaceOf(parcel), graph.GramsOf(parcel) * shares[i] * sweep.ShareOf(parents[i]));
            }
        }
    }

    public Passage[] Passages() => places
        .Select(p => new Passage(book[p.Key], Micros.ToInstant(p.Value.From), Micros.ToInstant(p.Value.Until), Math.Min(1, p.Value.Share)))
        .OrderBy(p => p.From).ThenBy(p => p.Place.Id).ToArray();

    public Link[] Links() => links.Where(l => l.Value >= 1)
        .Select(l => new Link(book[l.Key.From], book[l.Key.To], l.Value))
        .OrderByDescending(l => l.Grams).ToArray();

    private void See(ParcelGraph graph, int parcel, double share)
    {
        var place = graph.PlaceOf(parcel);
        var (from, until) = (graph.FromOf(parcel), graph.UntilOf(parcel));
        places[place] = places.TryGetValue(place, out var seen)
            ? (Math.Min(seen.From, from), Math.Max(seen.Until, until), Math.Max(seen.Share, share))
            : (from, until, share);
    }

    private void Flow(PlaceId from, PlaceId to, double grams)
    {
        if (from != to && grams > 0)
        {
            links[(from, to)] = links.GetValueOrDefault((from, to)) + grams;
        }
    }
}
