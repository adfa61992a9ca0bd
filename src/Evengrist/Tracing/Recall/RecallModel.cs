using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing.Bounds;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>A recall: the hypotheses side by side, the bounds for any outflow, nets and what is not known. Model: docs/model/recall.md.</summary>
internal sealed class RecallModel(Book book, RecallQuestion question, Instant asOf, IReadOnlyList<Belief> beliefs)
{
    private readonly Dictionary<PlaceId, double[]> found = [];
    private readonly double[] traced = new double[beliefs.Count];

    public RecallOutcome Answer(Strand[] strands, Func<BoundsOutcome> reckonBounds, Action<Action[]> run)
    {
        var asked = question.Starts.Select(s => (s.Place, new TraceQuestion(s.Place.Code) { From = s.From, Until = s.Until })).ToArray();
        var subjects = new Subject[strands.Length];
        BoundsOutcome bounds = null!;
        run([() => bounds = reckonBounds(), .. strands.Select((strand, h) => (Action)(() => subjects[h] = Subject.Joined(book, strand, asked, asOf)))]);
        if (subjects.Select(s => s.Nothing).FirstOrDefault(n => n is not null) is { } nothing)
        {
            var none = new Spread(new double[beliefs.Count], beliefs);
            return new RecallOutcome(question, asOf, beliefs, none, bounds.Traced, [], [], [], [], [], [], nothing);
        }

        var where = new WhereIsIt(book, strands.Length);
        var trail = new Trail(book);
        for (var h = 0; h < subjects.Length; h++)
        {
            var strand = subjects[h].Strand;
            var starts = subjects[h].Parcels.ConvertAll(p => p.Parcel).ToArray();
            strand.Sweep.Forward(starts, starts.Select(_ => 1.0).ToArray(), Strand.Least);
            traced[h] = Distinct(strand, subjects[h].Parcels);
            ReachModel.Packages(book, strand, asOf, grain: false, found, h, beliefs.Count);
            where.Gather(strand, asOf, h);
            if (h == 0)
            {
                trail.FollowForward(strand, asOf.ToMicros(), grain: false);
            }
        }

        return Outcome(bounds, where.Rows(beliefs), trail.Passages());
    }

    // What stems from another start as well counts once.
    private static double Distinct(Strand strand, List<Layer> starts)
    {
        double grams = 0;
        foreach (var start in starts)
        {
            double known = 0;
            var parents = strand.Parcels.Rows.ParentsOf(start.Parcel);
            var shares = strand.Parcels.Rows.SharesOf(start.Parcel);
            for (var i = 0; i < parents.Length; i++)
            {
                known += shares[i] * strand.Sweep.ShareOf(parents[i]);
            }

            grams += strand.Parcels.GramsOf(start.Parcel) * (1 - known);
        }

        return grams;
    }

    private RecallOutcome Outcome(BoundsOutcome bounds, Whereabouts[] where, Passage[] passages)
    {
        var weight = beliefs.Sum(b => b.Weight);
        var none = new double[beliefs.Count];
        var packages = found.Keys.Union(bounds.Packages.Keys)
            .Select(id => Package(id, found.GetValueOrDefault(id, none), bounds.Packages.GetValueOrDefault(id, Bound.None), weight))
            .OrderBy(p => p.Made).ThenBy(p => p.Place.Id).ToArray();
        var nets = new Nets(book, packages, beliefs, question, asOf);
        var rows = Where(where, bounds);
        var empty = new Spread(traced, beliefs);
        return new RecallOutcome(question, asOf, beliefs, empty, bounds.Traced, packages, rows, nets.All(), nets.Curve(), passages,
            [.. new Gaps(book, question, asOf, new Unread(book, [.. Began(bounds), .. bounds.Stays], Trucks(passages))).Of(packages, rows, bounds)], null) { Stays = bounds.Stays };
    }

    // What left a place of the plant in a span was there in it.
    private IEnumerable<Stay> Began(BoundsOutcome bounds) => question.Starts.Where(s => s.Place.Kind.IsFixed()).GroupBy(s => s.Place.Id).Where(g => bounds.Stays.All(b => b.Place.Id != g.Key))
        .Select(g => new Stay(book[g.Key], g.Min(s => s.From) ?? Instant.FromUnixTimeTicks(0), Instant.Min(asOf, g.Max(s => s.Until) ?? asOf), bounds.Traced.Most));

    private (Place Truck, double Grams)[] Trucks(Passage[] passages) => [.. passages.Where(p => p.Place.Kind == PlaceKind.Truck)
        .Select(p => (p.Place, book.MovementsOf(p.Place.Id).Select(i => book.Movements[i]).Where(m => m.To == p.Place.Id && m.Until <= asOf).Sum(m => (double)m.Mass.Grams) * p.Share))];

    private RecallPackage Package(PlaceId id, double[] each, Bound bound, double weight)
    {
        double chance = 0, threshold = question.Threshold.Grams;
        for (var h = 0; h < each.Length; h++)
        {
            chance += each[h] > threshold ? beliefs[h].Weight / weight : 0;
        }

        var (mass, sent, back) = (Mass.Zero, Mass.Zero, Mass.Zero);
        Instant? made = null;
        Movement? left = null;
        foreach (var index in book.MovementsOf(id))
        {
            var movement = book.Movements[index];
            if (movement.To == id && movement.Until <= asOf)
            {
                // What came back from a customer is here again, and was not filled anew where it had been filled before.
                var returned = book[movement.From].Kind == PlaceKind.Customer;
                (mass, back) = returned ? (mass, back + movement.Mass) : (mass + movement.Mass, back);
                left = returned && back >= sent ? null : left;
                made ??= movement.Until;
            }
            else if (movement.From == id && movement.At <= asOf && movement.Mass > Mass.Zero)
            {
                left = movement;
                sent += book[movement.To].Kind == PlaceKind.Customer ? movement.Mass : Mass.Zero;
            }
        }

        return new RecallPackage(book[id], mass > Mass.Zero ? mass : back, made ?? asOf, new Spread(each, beliefs), bound, Math.Min(1, chance), left is { } gone ? book[gone.To] : null, left?.At, book.HoldOn(id, asOf));
    }

    private RecallWhere[] Where(Whereabouts[] where, BoundsOutcome bounds)
    {
        var none = new double[beliefs.Count];
        var keys = where.Select(w => (w.Words, Id: w.Place?.Id ?? default)).Union(bounds.Where.Select(w => (w.Words, Id: w.Place?.Id ?? default)));
        var hypotheses = where.ToDictionary(w => (w.Words, w.Place?.Id ?? default));
        var any = bounds.Where.ToDictionary(w => (w.Words, w.Place?.Id ?? default));
        return keys.Select(k => new RecallWhere(k.Words, k.Id.Value > 0 ? book[k.Id] : null,
                hypotheses.GetValueOrDefault(k)?.Grams ?? new Spread(none, beliefs), any.GetValueOrDefault(k)?.Grams ?? Bound.None))
            .OrderBy(w => w.Words, StringComparer.Ordinal).ThenByDescending(w => w.Grams.Expected).ThenByDescending(w => w.Bound.Most).ToArray();
    }
}
