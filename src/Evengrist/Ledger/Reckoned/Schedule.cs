namespace Evengrist.Ledger.Reckoned;

/// <summary>Movements by the moment at which they began, and the moments at which places were proven empty.</summary>
internal sealed class Schedule(Book book)
{
    private readonly List<Entry> entries = [];
    private int known;

    public int Count => entries.Count;

    public Entry this[int i] => entries[i];

    /// <summary>Proven empty, by time: microseconds and place.</summary>
    public List<(long At, int Place)> Empties { get; private set; } = [];

    /// <summary>Takes in what the book has gained.</summary>
    public void Update()
    {
        Empties = book.Happenings
            .Where(h => h.Kind == HappeningKind.ProvenEmpty && book.Counts(h))
            .Select(h => (h.At.ToMicros(), h.On.Value))
            .OrderBy(e => e)
            .ToList();
        var added = new List<Entry>(book.Movements.Count - known);
        for (; known < book.Movements.Count; known++)
        {
            var movement = book.Movements[known];
            added.Add(new Entry(movement.At.ToMicros(), Ranks.Of(book[movement.From].Kind), known));
        }

        if (added.Count == 0)
        {
            return;
        }

        added.Sort();
        var tail = After(added[0].At - 1);
        var merged = entries.GetRange(tail, entries.Count - tail);
        entries.RemoveRange(tail, entries.Count - tail);
        int i = 0, j = 0;
        while (i < merged.Count || j < added.Count)
        {
            entries.Add(j == added.Count || (i < merged.Count && merged[i].CompareTo(added[j]) <= 0) ? merged[i++] : added[j++]);
        }
    }

    /// <summary>Position of the first movement that began after the moment.</summary>
    public int After(long moment)
    {
        int low = 0, high = entries.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (entries[middle].At <= moment)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    internal readonly record struct Entry(long At, int Rank, int Movement) : IComparable<Entry>
    {
        public int CompareTo(Entry other) => At != other.At ? At.CompareTo(other.At)
            : Rank != other.Rank ? Rank.CompareTo(other.Rank)
            : Movement.CompareTo(other.Movement);
    }
}
