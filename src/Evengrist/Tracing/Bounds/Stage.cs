using Evengrist.Ledger;

namespace Evengrist.Tracing.Bounds;

/// <summary>The places of a walk, and what one stretch of time does to them.</summary>
internal sealed class Stage
{
    private const double Nothing = 1e-4, NothingLeft = 1e-3;
    private readonly Book book;
    private readonly IReadOnlyList<Suspicion> starts;
    private readonly Func<Place, double, Held> make;
    private readonly bool[] marked;
    private readonly Held?[] held;
    private readonly Batch[] incoming;
    private readonly bool[] isClosed;
    private readonly List<int> touched = [];
    private readonly StretchOrder order;
    private readonly Levels levels;
    private readonly Dictionary<int, (long From, long Until, double Most)> stays = [];
    private Batch[] outs = new Batch[16];
    private double[] draws = new double[16];

    public Stage(Book book, IReadOnlyList<Suspicion> starts, Func<Place, double, Held> make, long begin)
    {
        (this.book, this.starts, this.make) = (book, starts, make);
        levels = new Levels(book, begin);
        var count = book.Places.Count + 1;
        (marked, held, incoming, isClosed) = (new bool[count], new Held?[count], new Batch[count], new bool[count]);
        order = new StretchOrder(book);
        foreach (var start in starts)
        {
            marked[start.Place.Id.Value] = true;
        }
    }

    public IComparer<Carried> Order => order;

    /// <summary>All the suspect there is so far, at most and at least; grams.</summary>
    public Bound Traced { get; private set; } = Bound.None;

    public double Cap => Traced.Most;

    /// <summary>Places that hold some of it, and what.</summary>
    public IEnumerable<(int Place, Held Held)> Holding()
    {
        for (var i = 1; i < held.Length; i++)
        {
            if (held[i] is { } holds)
            {
                yield return (i, holds);
            }
        }
    }

    public void Clear(int place, long now) => Leave(place, now);

    /// <summary>Places of the plant it can have been in, when, and how much of it can have come there; by number.</summary>
    public IEnumerable<(int Place, long From, long Until, double Most)> Stays(long now) => stays.Where(s => s.Value.Most >= 1)
        .Select(s => (s.Key, s.Value.From, Until: held[s.Key] is null ? s.Value.Until : now, s.Value.Most)).OrderBy(s => s.Key);

    public void NoteBeginning(Carried flow)
    {
        if (flow.IsWhole && held[flow.From] is { IsAnyOrder: true } store)
        {
            flow.Began = (store, store.All, store.Come);
        }
    }

    /// <summary>What a movement carried in all, bounded by each stretch and by all it drew from.</summary>
    public Batch Settled(Carried flow)
    {
        if (flow.Began is not { } began || !ReferenceEquals(held[flow.From], began.Store))
        {
            return flow.Arrived;
        }

        var come = began.Store.Come;
        var from = new Batch(
            began.Lay.Grams + come.Grams - began.Come.Grams, began.Lay.Least + come.Least - began.Come.Least,
            Math.Min(Cap, began.Lay.Most + come.Most - began.Come.Most), 0, 1).Part(flow.Arrived.Grams);
        var least = Math.Max(flow.Arrived.Least, from.Least);
        return flow.Arrived with { Least = least, Most = Math.Max(least, Math.Min(flow.Arrived.Most, from.Most)) };
    }

    /// <summary>Sets down what a movement has carried, whole.</summary>
    public void SetDown(int place, in Batch arrived, long now)
    {
        if (held[place] is null && arrived.Most <= Nothing)
        {
            return;
        }

        var to = held[place] ??= make(book[new PlaceId(place)], Math.Max(0, levels.Of(place, now, whole: false)));
        to.Exchange(arrived, [], [], Cap);
    }

    /// <summary>Moves what is due in one stretch; a stretch of no length is what is set down at once.</summary>
    public void Step(List<(Carried Flow, double Grams)> due, long now, long next)
    {
        if (!Concerns(due))
        {
            foreach (var (flow, grams) in due)
            {
                flow.Moved += grams;
                flow.Arrived = flow.IsWhole ? flow.Arrived.Blended(Batch.Clean(grams), Cap) : default;
            }

            return;
        }

        touched.Clear();
        foreach (var group in order.Groups(due))
        {
            if (group.LoopGrams > 0)
            {
                Add(group.Place, Batch.Unknown(group.LoopGrams, Cap));
                isClosed[group.Place] = true;
            }

            Leave(due, group, now, next);
        }

        foreach (var place in touched)
        {
            if (incoming[place].Grams > 0)
            {
                Leave(due, new StretchOrder.Group(place, [], 0), now, next);
            }

            incoming[place] = default;
            isClosed[place] = false;
            if (held[place] is { } holds && (holds.Grams < NothingLeft || holds.IsClean(Nothing)))
            {
                Leave(place, next);
            }
        }
    }

    private void Leave(int place, long now)
    {
        held[place] = null;
        if (stays.TryGetValue(place, out var stay))
        {
            stays[place] = stay with { Until = now };
        }
    }

    private void Come(int place, in Batch into, long now)
    {
        if (into.Most > 0 && book[new PlaceId(place)].Kind.IsFixed())
        {
            var stay = stays.GetValueOrDefault(place, (now, now, 0));
            stays[place] = stay with { Most = stay.Most + into.Most };
        }
    }

    private bool Concerns(List<(Carried Flow, double Grams)> due)
    {
        foreach (var (flow, _) in due)
        {
            if (held[flow.From] is not null || held[flow.To] is not null || marked[flow.From] || marked[flow.To])
            {
                return true;
            }
        }

        return false;
    }

    private void Leave(List<(Carried Flow, double Grams)> due, in StretchOrder.Group group, long now, long next)
    {
        var (place, flows) = (group.Place, group.Flows);
        var into = incoming[place];
        incoming[place] = default;
        Touch(place);
        if (outs.Length < flows.Count)
        {
            (outs, draws) = (new Batch[2 * flows.Count], new double[2 * flows.Count]);
        }

        for (var i = 0; i < flows.Count; i++)
        {
            draws[i] = due[flows[i]].Grams;
        }

        if (held[place] is null && into.Most <= Nothing)
        {
            for (var i = 0; i < flows.Count; i++)
            {
                outs[i] = Batch.Clean(draws[i]);
            }
        }
        else
        {
            Exchange(due, place, into, flows.Count, now, next);
        }

        for (var i = 0; i < flows.Count; i++)
        {
            Carry(due[flows[i]].Flow, outs[i], now, next);
        }
    }

    private void Exchange(List<(Carried Flow, double Grams)> due, int place, in Batch into, int count, long now, long next)
    {
        if (held[place] is null)
        {
            var before = levels.Of(place, now, whole: true);
            foreach (var (flow, grams) in now == next ? due : [])
            {
                before += (flow.From == place ? grams : 0) - (flow.To == place ? grams : 0);
            }

            held[place] = make(book[new PlaceId(place)], Math.Max(0, before));
        }

        Come(place, into, now);

        // A place that has not enough gives what it has; the flow makes up for it when there is more.
        var there = held[place]!.Grams + into.Grams;
        double wanted = 0;
        for (var i = 0; i < count; i++)
        {
            wanted += draws[i];
        }

        if (wanted > there)
        {
            for (var i = 0; i < count; i++)
            {
                draws[i] *= there / wanted;
            }
        }

        held[place]!.Exchange(into, draws.AsSpan(0, count), outs.AsSpan(0, count), Cap);
    }

    private void Carry(Carried flow, Batch batch, long now, long next)
    {
        if (Marks(flow, now, next))
        {
            Traced += new Bound(batch.Grams - batch.Most, batch.Grams - batch.Least);
            batch = Batch.Suspect(batch.Grams);
            flow.Began = null;
        }

        flow.Moved += batch.Grams;
        if (flow.IsWhole)
        {
            flow.Arrived = flow.Arrived.Blended(batch, Cap);
        }

        if (flow.Reaches && !isClosed[flow.To])
        {
            Add(flow.To, batch);
        }
    }

    private bool Marks(Carried flow, long now, long next)
    {
        if (!marked[flow.From] && !marked[flow.To])
        {
            return false;
        }

        foreach (var start in starts)
        {
            if (start.Marks(flow, now, next))
            {
                return true;
            }
        }

        return false;
    }

    private void Add(int place, in Batch batch)
    {
        Touch(place);
        incoming[place] = book[new PlaceId(place)].Kind.Role() is PlaceRole.Junction or PlaceRole.Unit
            ? incoming[place].Blended(batch, Cap) : incoming[place].Beside(batch, Cap);
    }

    private void Touch(int place)
    {
        if (!touched.Contains(place))
        {
            touched.Add(place);
        }
    }
}
