using Evengrist.Ledger;

namespace Evengrist.Tracing.Bounds;

/// <summary>Stocks of places at moments within a walk. What came after is summed once a place, so that a moment long ago costs no more than one just now.</summary>
/// <param name="book">The book; it must not change while this is used.</param>
/// <param name="begin">No earlier moment is asked about; microseconds.</param>
internal sealed class Levels(Book book, long begin)
{
    private const int Few = 64;
    private readonly Dictionary<int, Later> known = [];

    /// <summary>Stock at a moment by even rates; what is set down at that very moment counts where asked, and what ends in a unit then does not.</summary>
    /// <param name="place">The place.</param>
    /// <param name="moment">The moment, microseconds.</param>
    /// <param name="whole">Whether what is set down at that very moment counts.</param>
    public double Of(int place, long moment, bool whole)
    {
        var isUnit = book[new PlaceId(place)].Kind.Role() is PlaceRole.Unit or PlaceRole.Sink;
        var timeline = book.TimelineOf(new PlaceId(place));
        var entries = timeline.Entries;
        double level = timeline.Total;
        var end = entries.Count;
        if (end > Few && moment >= begin)
        {
            var later = LaterOf(place, timeline);
            end = timeline.FirstDoneAfter(moment + later.Longest);
            level -= later.From(end);
        }

        for (var i = end - 1; i >= 0 && entries[i].Until >= moment; i--)
        {
            var entry = entries[i];
            if (entry.At == entry.Until)
            {
                level -= entry.Until > moment || !whole ? entry.Grams : 0;
            }
            else if (entry.Until > moment || (isUnit && entry.Grams > 0 && !whole))
            {
                level -= entry.Grams - (isUnit && entry.Grams > 0 ? 0 : entry.PartBefore(moment));
            }
        }

        return level;
    }

    private Later LaterOf(int place, Timeline timeline)
    {
        if (!known.TryGetValue(place, out var later))
        {
            known.Add(place, later = new Later(timeline, begin));
        }

        return later;
    }

    // Sums of all entries from one on, back to the first that was done after the beginning of the walk.
    private sealed class Later
    {
        private readonly int first;
        private readonly long[] sums;

        public Later(Timeline timeline, long begin)
        {
            var entries = timeline.Entries;
            first = timeline.FirstDoneAfter(begin - 1);
            sums = new long[entries.Count - first + 1];
            for (var i = entries.Count - 1; i >= first; i--)
            {
                sums[i - first] = sums[i - first + 1] + entries[i].Grams;
                Longest = Math.Max(Longest, entries[i].Until - entries[i].At);
            }
        }

        /// <summary>Longest flow among them, microseconds: what was done later than that after a moment began after it.</summary>
        public long Longest { get; }

        public long From(int entry) => sums[entry - first];
    }
}
