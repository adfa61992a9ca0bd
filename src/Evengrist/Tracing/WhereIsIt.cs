using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Adds up where what was traced forward lies at a moment: nothing of it may be missing.</summary>
internal sealed class WhereIsIt(Book book, int hypotheses)
{
    private readonly Dictionary<(string Words, PlaceId Place), double[]> rows = [];

    public void Gather(Strand strand, Instant asOf, int h)
    {
        var (graph, sweep) = (strand.Parcels, strand.Sweep);
        var snapshot = strand.Reckoning.At(asOf);
        foreach (var place in snapshot.Places)
        {
            Add(place, Sum(sweep, snapshot.ContentOf(place)), h);
        }

        foreach (var (place, layers) in snapshot.Arriving)
        {
            Add(place, Sum(sweep, layers), h);
        }

        var latest = asOf.ToMicros();
        foreach (var parcel in sweep.Reached)
        {
            var place = graph.PlaceOf(parcel);
            if (graph.MovementOf(parcel) >= 0 && graph.UntilOf(parcel) <= latest && book[place].Kind.Role() == PlaceRole.Sink)
            {
                Add(place, graph.GramsOf(parcel) * sweep.ShareOf(parcel), h);
            }
        }
    }

    public Whereabouts[] Rows(IReadOnlyList<Belief> beliefs) => rows
        .Select(r => new Whereabouts(r.Key.Words, r.Key.Place.Value > 0 ? book[r.Key.Place] : null, new Spread(r.Value, beliefs)))
        .OrderBy(w => w.Words, StringComparer.Ordinal).ThenByDescending(w => w.Grams.Expected).ToArray();

    private static double Sum(Sweep sweep, IReadOnlyList<Layer> layers)
    {
        double grams = 0;
        foreach (var layer in layers)
        {
            grams += layer.Grams * sweep.ShareOf(layer.Parcel);
        }

        return grams;
    }

    private void Add(PlaceId id, double grams, int h)
    {
        if (grams <= 0)
        {
            return;
        }

        var key = Whereabouts.KeyOf(book[id]);
        if (!rows.TryGetValue(key, out var each))
        {
            rows.Add(key, each = new double[hypotheses]);
        }

        each[h] += grams;
    }
}
