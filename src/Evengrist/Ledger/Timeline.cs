using Evengrist.Quantities;

namespace Evengrist.Ledger;

/// <summary>Everything that counts of what went into and out of one place, kept sorted by the moment at which it was done.</summary>
internal sealed class Timeline
{
    private readonly List<Entry> entries = [];

    /// <summary>In − out of everything that counts, in grams.</summary>
    public long Total { get; private set; }

    public IReadOnlyList<Entry> Entries => entries;

    public void Add(Entry entry)
    {
        var i = entries.Count;
        while (i > 0 && entries[i - 1].Until > entry.Until)
        {
            i--;
        }

        entries.Insert(i, entry);
        Total += entry.Grams;
    }

    public void Remove(Entry entry)
    {
        var i = FirstDoneAtOrAfter(entry.Until);
        while (entries[i].Movement != entry.Movement || entries[i].Grams != entry.Grams)
        {
            i++;
        }

        entries.RemoveAt(i);
        Total -= entry.Grams;
    }

    /// <summary>What was done at exactly a moment.</summary>
    public IEnumerable<Entry> DoneAt(long moment)
    {
        for (var i = FirstDoneAtOrAfter(moment); i < entries.Count && entries[i].Until == moment; i++)
        {
            yield return entries[i];
        }
    }

    /// <summary>Stock at a moment, everything that happened up to and at it included; a flow under way counts by its elapsed part, to the gram.</summary>
    public long StockAt(long moment)
    {
        var stock = Total;
        for (var i = entries.Count - 1; i >= 0 && entries[i].Until > moment; i--)
        {
            stock -= entries[i].Grams - (long)Math.Round(entries[i].PartBefore(moment));
        }

        return stock;
    }

    /// <summary>Grams in (positive) and out (positive) up to a moment.</summary>
    public (long In, long Out) ThroughputAt(long moment)
    {
        long into = 0, outOf = 0;
        foreach (var entry in entries)
        {
            if (entry.At > moment)
            {
                continue;
            }

            var part = entry.Until <= moment ? entry.Grams : (long)Math.Round(entry.PartBefore(moment));
            if (part > 0)
            {
                into += part;
            }
            else
            {
                outOf -= part;
            }
        }

        return (into, outOf);
    }

    /// <summary>
    /// The first moment from <paramref name="from"/> on at which the stock lies below 0 or above the capacity; null where there is none.
    /// At one moment everything set down comes before everything taken.
    /// </summary>
    public Breach? FirstBreach(long from, Mass? capacity)
    {
        var first = FirstDoneAtOrAfter(from);
        double level = Total;
        var moments = new SortedSet<long> { from };
        for (var i = first; i < entries.Count; i++)
        {
            var entry = entries[i];
            level -= entry.Grams - (entry.At < from ? entry.PartBefore(from) : 0);
            moments.Add(Math.Max(entry.At, from));
            moments.Add(entry.Until);
        }

        return Sweep(first, level, moments, capacity);
    }

    /// <summary>
    /// Something above zero set down or taken within a span, <paramref name="until"/> left out: a load at a moment of it, a flow under way at one; null where there is nothing.
    /// </summary>
    public Entry? FirstWithin(long from, long until)
    {
        for (var i = FirstDoneAtOrAfter(from); i < entries.Count; i++)
        {
            var entry = entries[i];
            if (entry.Grams != 0 && entry.At < until && (entry.Until > from || entry.At == from))
            {
                return entry;
            }
        }

        return null;
    }

    private Breach? Sweep(int first, double level, SortedSet<long> moments, Mass? capacity)
    {
        var byStart = entries.Skip(first).OrderBy(e => e.At).ToArray();
        var started = 0;
        List<Entry> running = [];
        var previous = moments.Min;
        foreach (var moment in moments)
        {
            foreach (var flow in running)
            {
                level += flow.PartBefore(moment) - flow.PartBefore(previous);
            }

            // While even flows run, each may be a gram off what was weighed by then; when none runs the grams are exact.
            var slack = running.Count == 0 ? 0.5 : 1.5 + running.Count;
            if (Judge(moment, level, slack, capacity) is { } before)
            {
                return before;
            }

            running.RemoveAll(f => f.Until <= moment);
            for (; started < byStart.Length && byStart[started].At <= moment; started++)
            {
                var entry = byStart[started];
                if (entry.Until == entry.At)
                {
                    level += entry.Grams;
                }
                else if (entry.Until > moment)
                {
                    running.Add(entry);
                }
            }

            if (Judge(moment, level, slack, capacity) is { } after)
            {
                return after;
            }

            previous = moment;
        }

        return null;
    }

    private static Breach? Judge(long moment, double level, double slack, Mass? capacity) => level < -slack
        ? new Breach(moment, (long)Math.Round(level), TooLittle: true)
        : capacity is { } most && level > most.Grams + slack
            ? new Breach(moment, (long)Math.Round(level - most.Grams), TooLittle: false)
            : null;

    /// <summary>Position of the first that was done after a moment.</summary>
    public int FirstDoneAfter(long moment) => FirstDoneAtOrAfter(moment + 1);

    private int FirstDoneAtOrAfter(long moment)
    {
        int low = 0, high = entries.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (entries[middle].Until < moment)
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

    /// <summary>One movement seen from the place: grams in are positive, grams out negative.</summary>
    internal readonly record struct Entry(long At, long Until, long Grams, int Movement)
    {
        public double PartBefore(long moment) => moment >= Until ? Grams
            : moment <= At ? 0
            : Grams * ((double)(moment - At) / (Until - At));
    }

    /// <summary>Where a place would hold too little or too much, and by how many grams.</summary>
    internal readonly record struct Breach(long Moment, long Grams, bool TooLittle);
}
