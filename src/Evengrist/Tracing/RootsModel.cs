using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Back-trace: shares by origin under each hypothesis, their union and their spread.</summary>
internal static class RootsModel
{
    public static RootsOutcome Answer(Book book, TraceQuestion question, Place place, Instant asOf, Subject[] subjects, IReadOnlyList<Belief> beliefs)
    {
        var grams = new Spread(subjects.Select(s => s.Grams).ToArray(), beliefs);
        if (subjects.Select(s => s.Nothing).FirstOrDefault(n => n is not null) is { } nothing)
        {
            return new RootsOutcome(question, place, asOf, beliefs, grams, [], [], [], 0, nothing);
        }

        var shares = new Dictionary<(PlaceId Origin, PlaceId Truck), double[]>();
        var trail = new Trail(book);
        double leftOut = 0;
        for (var h = 0; h < subjects.Length; h++)
        {
            var (strand, parcels) = (subjects[h].Strand, subjects[h].Parcels);
            var sweep = strand.Sweep;
            var whole = subjects[h].Grams;
            sweep.Back(parcels.ConvertAll(p => p.Parcel).ToArray(), parcels.ConvertAll(p => p.Grams / whole).ToArray(), Strand.Least);
            leftOut = Math.Max(leftOut, sweep.LeftOut);
            foreach (var origin in sweep.Origins)
            {
                var key = (strand.Parcels.PlaceOf(origin), TruckOf(book, strand.Parcels.MovementOf(origin)));
                if (!shares.TryGetValue(key, out var each))
                {
                    shares.Add(key, each = new double[subjects.Length]);
                }

                each[h] += sweep.ShareOf(origin);
            }

            if (h == 0)
            {
                trail.FollowBack(strand, whole);
            }
        }

        return new RootsOutcome(question, place, asOf, beliefs, grams, Rows(book, shares, beliefs), trail.Passages(), trail.Links(), leftOut, null);
    }

    private static Root[] Rows(Book book, Dictionary<(PlaceId Origin, PlaceId Truck), double[]> shares, IReadOnlyList<Belief> beliefs)
    {
        var grain = new double[beliefs.Count];
        foreach (var ((origin, _), each) in shares)
        {
            for (var h = 0; h < each.Length && IsGrain(book[origin]); h++)
            {
                grain[h] += each[h];
            }
        }

        return shares.Select(s => new Root(
                book[s.Key.Origin],
                s.Key.Truck.Value > 0 ? book[s.Key.Truck] : null,
                new Spread(s.Value, beliefs),
                new Spread(s.Value.Select((v, h) => IsGrain(book[s.Key.Origin]) && grain[h] > 0 ? v / grain[h] : 0).ToArray(), beliefs)))
            .OrderByDescending(r => r.Share.Expected).ThenBy(r => r.Origin.Id).ThenBy(r => r.Truck?.Id.Value)
            .ToArray();
    }

    private static bool IsGrain(Place origin) => origin.Kind is not (PlaceKind.Water or PlaceKind.AdditiveLot);

    private static PlaceId TruckOf(Book book, int movement) =>
        movement >= 0 && book.Movements[movement].To is var to && book[to].Kind == PlaceKind.Truck ? to : default;
}
