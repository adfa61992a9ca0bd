using Evengrist.Ledger;

namespace Evengrist.Tracing.Bounds;

/// <summary>In which order the places of one stretch are looked into: down the connections, so that all that comes in is known before anything leaves.</summary>
internal sealed class StretchOrder : IComparer<Carried>
{
    private readonly long[] ranks;

    public StretchOrder(Book book)
    {
        ranks = new long[book.Places.Count + 1];
        var feeds = book.Connections.GroupBy(c => c.From.Value).ToDictionary(g => g.Key, g => g.Select(c => c.To.Value).Order().ToArray());
        var seen = new HashSet<int>();
        var rank = (long)book.Places.Count;
        foreach (var place in book.Places.Where(p => p.Kind.IsFixed()))
        {
            Visit(place.Id.Value);
        }

        // Loads, packages and customers give what they held before: they come first.
        foreach (var place in book.Places.Where(p => !p.Kind.IsFixed()))
        {
            ranks[place.Id.Value] = place.Id.Value - book.Places.Count - 1;
        }

        // Deepest first: a place is numbered once all that it feeds is.
        void Visit(int place)
        {
            if (seen.Add(place))
            {
                foreach (var to in feeds.GetValueOrDefault(place) ?? [])
                {
                    Visit(to);
                }

                ranks[place] = rank--;
            }
        }
    }

    public int Compare(Carried? x, Carried? y) => ranks[x!.From] != ranks[y!.From] ? ranks[x.From].CompareTo(ranks[y.From]) : x.Movement.CompareTo(y.Movement);

    /// <summary>Movements by the place they leave, upstream first. Where they go round in a circle, the circle is cut at one place.</summary>
    /// <param name="due">What is due, in this order.</param>
    public List<Group> Groups(List<(Carried Flow, double Grams)> due)
    {
        var groups = new List<Group>();
        var downward = true;
        for (var i = 0; i < due.Count; i++)
        {
            var flow = due[i].Flow;
            downward &= !flow.Reaches || ranks[flow.From] < ranks[flow.To];
            if (groups.Count > 0 && groups[^1].Place == flow.From)
            {
                groups[^1].Flows.Add(i);
            }
            else
            {
                groups.Add(new Group(flow.From, [i], 0));
            }
        }

        return downward ? groups : Sorted(due);
    }

    private List<Group> Sorted(List<(Carried Flow, double Grams)> due)
    {
        var byPlace = Enumerable.Range(0, due.Count).GroupBy(i => due[i].Flow.From).ToDictionary(g => g.Key, g => g.ToList());
        var waits = byPlace.Keys.ToDictionary(p => p, _ => (Count: 0, Grams: 0.0));
        bool Feeds(int i) => due[i].Flow.Reaches && byPlace.ContainsKey(due[i].Flow.To);
        foreach (var i in Enumerable.Range(0, due.Count).Where(Feeds))
        {
            var (count, grams) = waits[due[i].Flow.To];
            waits[due[i].Flow.To] = (count + 1, grams + due[i].Grams);
        }

        var groups = new List<Group>();
        var ready = new Queue<int>(waits.Where(w => w.Value.Count == 0).Select(w => w.Key).OrderBy(p => ranks[p]));
        while (waits.Count > 0)
        {
            if (!ready.TryDequeue(out var place))
            {
                place = waits.Keys.MinBy(p => ranks[p]);
            }

            if (!waits.Remove(place, out var left))
            {
                continue;
            }

            groups.Add(new Group(place, byPlace[place], left.Count > 0 ? left.Grams : 0));
            foreach (var i in byPlace[place].Where(i => Feeds(i) && waits.ContainsKey(due[i].Flow.To)))
            {
                var (count, grams) = waits[due[i].Flow.To];
                waits[due[i].Flow.To] = (count - 1, grams - due[i].Grams);
                if (count == 1)
                {
                    ready.Enqueue(due[i].Flow.To);
                }
            }
        }

        return groups;
    }

    /// <summary>What leaves one place in a stretch.</summary>
    /// <param name="Place">The place.</param>
    /// <param name="Flows">Positions among what is due.</param>
    /// <param name="LoopGrams">Grams that come in by a circle and are not known yet.</param>
    internal readonly record struct Group(int Place, List<int> Flows, double LoopGrams);
}
