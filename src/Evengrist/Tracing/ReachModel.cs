using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tracing;

/// <summary>Forward trace: packages and customers under each hypothesis, their union and their spread, and where the rest is.</summary>
internal static class ReachModel
{
    public static ReachOutcome Answer(Book book, TraceQuestion question, Place place, Instant asOf, Subject[] subjects, IReadOnlyList<Belief> beliefs)
    {
        var grams = new Spread(subjects.Select(s => s.Grams).ToArray(), beliefs);
        if (subjects.Select(s => s.Nothing).FirstOrDefault(n => n is not null) is { } nothing)
        {
            return new ReachOutcome(question, place, asOf, beliefs, grams, [], new int[beliefs.Count], 0, new int[beliefs.Count], [], [], [], nothing);
        }

        var found = new Dictionary<PlaceId, double[]>();
        var where = new WhereIsIt(book, subjects.Length);
        var trail = new Trail(book);
        for (var h = 0; h < subjects.Length; h++)
        {
            var strand = subjects[h].Strand;
            var starts = subjects[h].Parcels.ConvertAll(p => p.Parcel).ToArray();
            strand.Sweep.Forward(starts, starts.Select(_ => 1.0).ToArray(), Strand.Least);
            Packages(book, strand, asOf, IsGrain(place), found, h, subjects.Length);
            where.Gather(strand, asOf, h);
            if (h == 0)
            {
                trail.FollowForward(strand, asOf.ToMicros(), IsGrain(place));
            }
        }

        return Outcome(book, question, place, asOf, beliefs, grams, found, where, trail);
    }

    private static ReachOutcome Outcome(
        Book book, TraceQuestion question, Place place, Instant asOf, IReadOnlyList<Belief> beliefs, Spread grams,
        Dictionary<PlaceId, double[]> found, WhereIsIt where, Trail trail)
    {
        double threshold = question.Threshold.Grams;
        var counts = new int[beliefs.Count];
        var all = new int[beliefs.Count];
        var packages = new List<Reached>();
        var union = 0;
        foreach (var (id, each) in found)
        {
            var over = false;
            double chance = 0;
            for (var h = 0; h < each.Length; h++)
            {
                all[h] += each[h] > 0 ? 1 : 0;
                if (each[h] > threshold)
                {
                    counts[h]++;
                    chance += beliefs[h].Weight;
                    over = true;
                }
            }

            if (over)
            {
                union++;
                packages.Add(Package(book, id, asOf, new Spread(each, beliefs), chance / beliefs.Sum(b => b.Weight)));
            }
        }

        return new ReachOutcome(question, place, asOf, beliefs, grams, packages.OrderBy(p => p.Made).ThenBy(p => p.Place.Id).ToArray(),
            counts, union, all, where.Rows(beliefs), trail.Passages(), trail.Links(), null);
    }

    public static void Packages(Book book, Strand strand, Instant asOf, bool grain, Dictionary<PlaceId, double[]> found, int h, int hypotheses)
    {
        var graph = strand.Parcels;
        var latest = asOf.ToMicros();
        foreach (var parcel in strand.Sweep.Reached)
        {
            var movement = graph.MovementOf(parcel);
            var place = graph.PlaceOf(parcel);
            if (movement < 0 || graph.UntilOf(parcel) > latest || book[place].Kind is not (PlaceKind.Pallet or PlaceKind.BulkLoad or PlaceKind.ReworkTote))
            {
                continue;
            }

            if (!found.TryGetValue(place, out var each))
            {
                found.Add(place, each = new double[hypotheses]);
            }

            each[h] += graph.GramsOf(parcel) * strand.Sweep.ShareOf(parcel) / (grain ? graph.GrainShareOf(parcel) : 1);
        }
    }

    private static Reached Package(Book book, PlaceId id, Instant asOf, Spread grams, double chance)
    {
        var filled = book.MovementsOf(id).Select(i => book.Movements[i]).Where(m => m.To == id && m.Until <= asOf).ToArray();
        var left = book.MovementsOf(id).Select(i => book.Movements[i]).Where(m => m.From == id && m.At <= asOf).Select(m => (Movement?)m).LastOrDefault();
        return new Reached(book[id], filled.Aggregate(Quantities.Mass.Zero, (sum, m) => sum + m.Mass), filled[0].Until, grams, chance,
            left is { } gone ? book[gone.To] : null, left?.At, book.HoldOn(id, asOf));
    }

    // Water and additives are set aside only when what is traced is grain; what leaves a machine is followed as it is.
    private static bool IsGrain(Place place) => place.Kind is PlaceKind.Field or PlaceKind.Elevator or PlaceKind.Opening or PlaceKind.Truck;
}
